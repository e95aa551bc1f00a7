import type { Job, VariantRange } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { describe } from "../describe/describe";
import type { NumberToken } from "../describe/token";
import { stepOf } from "../quantity/format";

// The numbers of the description that may differ from student to student.

export interface Dimension {
  /** Path in the job, a cut by its id. */
  readonly field: string;
  /** The clause it stands in, for its light in the drawing, and what that is about. */
  readonly clause: string;
  readonly clauseName: string;
  readonly token: NumberToken;
}

/** Every direction in figures. */
const spelled: ReadonlySet<string> = Object.assign(new Set<string>(), { has: () => true });

/** All of them, in the order of the description; parts that are switched off are left out. */
export function dimensionsOf(job: Job, trade: TradeWords): Dimension[] {
  return describe(job, spelled, trade).filter(({ on }) => on).flatMap(({ id, name, tokens }) =>
    tokens.flatMap((token) => (token.kind === "number" ? [{ field: fieldById(job, token.field), clause: id, clauseName: name, token }] : [])));
}

/** The path of a number with the cut by its id instead of its place. */
export function fieldById(job: Job, field: string): string {
  return field.replace(/^part\.cuts\.(\d+)/, (_, index: string) => `part.cuts.${job.part.cuts[Number(index)]?.id ?? index}`);
}

/** A range to begin with: round figures about the value; all four sides for a direction. */
export function firstRange({ field, token: { quantity, value } }: Dimension, units: Job["units"]): VariantRange {
  if (field.endsWith("direction") || field.endsWith("seam.angle")) return { field, from: 0, to: 270, step: 90 };
  const step = quantity === "angle" ? 5 : quantity === "count" ? 4 : units === "inch" ? 2 * stepOf("length", units) : Math.abs(value) >= 50 ? 5 : 1;
  const reach = quantity === "count" ? 0 : quantity === "angle" ? 2 * step : Math.max(1, Math.round(Math.abs(value) / 5 / step)) * step;
  const from = Math.max(value > 0 ? Math.min(value, step) : -Infinity, value - reach);
  return { field, from: rounded(from), to: rounded(quantity === "count" ? value + 2 * step : value + reach), step: rounded(step) };
}

function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
