import type { Problem } from "../../core/index";

/** mm: finer than any table cuts, and coarser than any shop marks out. */
const tolerances = { min: 0.001, max: 1 };

/** What is wrong with the tolerance of a cut file. */
export function toleranceProblem(tolerance: number): Problem | undefined {
  const { min, max } = tolerances;
  if (tolerance >= min && tolerance <= max) return undefined;
  return { code: tolerance < min ? "too-small" : "too-large", field: "tolerance", value: tolerance, min, max };
}
