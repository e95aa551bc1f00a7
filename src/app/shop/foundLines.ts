import type { Allowance, AllowancePart, Development, EndPlate, Fabrication, StationHeights } from "../../core/index";
import { capital } from "../../drawing/tradeWords";
import { clauseId } from "../describe/shop/shopClauses";
import type { Format } from "../quantity/format";
import { smallLength } from "../quantity/smallLength";
import { shopWords } from "../words/shop";

const { found } = shopWords;

/** Under this, in mm, a difference of surfaces is none. */
const seen = 0.0005;

/** What was worked out for each clause of the shop, by its name on the page: sums of allowances, stretch-out, plates, how far a surface matters. */
export function foundLines({ job, pieces: [developed] }: Development, { pieces: [piece], plates }: Fabrication, format: Format): ReadonlyMap<string, string> {
  const lines = new Map<string, string>();
  if (!piece || !developed) return lines;
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  const girth = found.girth(capital(format.trade.girth), length(developed.form.girth));
  lines.set(clauseId("purpose"), girth);
  lines.set(clauseId("kFactor"), girth);
  lines.set(clauseId("surface"), surfaceLine(piece.heights, format));
  for (const end of ["top", "bottom"] as const) {
    const allowance = piece.allowances.find(({ place }) => place === end);
    if (allowance && isSum(allowance.parts)) lines.set(clauseId(`edges.${end}`), sumLine(allowance.parts, allowance.width, format));
    const plate = plates.filter((one) => one.end === end).map((one) => plateLine(one, format));
    if (plate.length > 0) lines.set(clauseId(`plates.${end}`), plate.join("; "));
  }
  const seam = seamLine(piece.allowances, job.fabrication.seam, format);
  if (seam) lines.set(clauseId("seam"), seam);
  if (piece.blank.mass > 0) lines.set(clauseId("quantity"), piece.quantity === 1 ? kilograms(piece.blank.mass) : found.mass(kilograms(piece.blank.mass), kilograms(piece.blank.mass * piece.quantity)));
  return lines;
}

/** "1.23 kg": three significant figures, or whole grams of little. */
export function kilograms(mass: number): string {
  return mass < 1 ? `${Math.round(mass * 1000)} g` : `${Number(mass.toPrecision(4))} kg`;
}

/** "2½ × 3 + 0.8 = 8.3 added": the terms of an allowance, in the units of the job. */
export function sumLine(parts: readonly AllowancePart[], width: number, format: Format): string {
  const terms = parts.map(({ factor, size }) => found.factor(factor, format.length(size)));
  const total = `${format.length(width)} ${format.unit}`;
  return isSum(parts) ? found.sum(terms.join(" + "), total) : found.plain(total);
}

/** Whether the width added is more than the width typed. */
function isSum(parts: readonly AllowancePart[]): boolean {
  return parts.length > 1 || parts.some(({ factor }) => factor !== 1);
}

function seamLine(allowances: readonly Allowance[], seam: Development["job"]["fabrication"]["seam"], format: Format): string | null {
  if (seam.kind === "butt") return null;
  const at = (place: Allowance["place"]) => allowances.find((one) => one.place === place)?.width ?? 0;
  const [begin, end] = [at("seam-start"), at("seam-end")];
  if (begin + end === 0) return null;
  const sum = sumLine([{ factor: seam.kind === "grooved" ? 3 : 1, size: seam.width, what: "width" }], begin + end, format);
  return found.seam(sum, format.length(begin), format.length(end));
}

function surfaceLine(heights: readonly StationHeights[], format: Format): string {
  const greatest = heights
    .map(({ label, topDifference, bottomDifference }) => ({ label, by: Math.max(Math.abs(topDifference ?? 0), Math.abs(bottomDifference ?? 0)) }))
    .reduce((most, one) => (one.by > most.by + seen ? one : most), { label: "", by: 0 });
  return greatest.by < seen ? found.sameSurface : found.surface(smallLength(greatest.by, format), greatest.label);
}

function plateLine({ shape, semiAxes, blank }: EndPlate, format: Format): string {
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  if (shape === "disc") return found.disc(length(blank.width));
  if (shape === "ellipse") return found.ellipse(format.length(2 * semiAxes.long), length(2 * semiAxes.short));
  if (shape === "bent") return found.bent(format.length(blank.width), length(blank.height));
  return found.shaped(format.length(blank.width), length(blank.height));
}
