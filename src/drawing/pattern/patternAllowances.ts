// What the shop adds to a pattern on the board: the cut lines in place of the net ones, bend lines, slits, and the sums in words.

import { type AllowancePart, type Contour, type Development, type FabricatedPiece, type Job, fabricate } from "../../core/index";
import { allowanceSum } from "../blank/allowanceSum";
import { type BlankWords, ENGLISH_BLANK } from "../blank/blankWords";
import { bendItems } from "../blank/cutLines";
import type { PathItem } from "../display";
import type { Figures } from "../figures";

/** In pattern coordinates of the piece as described, mm. */
export interface PatternAllowances {
  readonly contours: readonly Contour[];
  /** Bend lines, seam lines and slits. */
  readonly lines: readonly PathItem[];
  /** "top: flange 12". */
  readonly sums: readonly string[];
}

/** What each piece gets; null when the job asks for no allowance. */
export function patternAllowances({ job, pieces, ...rest }: Development, figures: Figures, words: BlankWords = ENGLISH_BLANK): PatternAllowances[] | null {
  if (!asksForAllowances(job)) return null;
  const described: Job = { ...job, fabrication: { ...job.fabrication, hand: "described" } };
  return fabricate({ job: described, pieces, ...rest }).pieces.map((made) => ({ contours: made.contours, lines: bendItems(made.marks), sums: sumsOf(made, figures, words) }));
}

function asksForAllowances({ fabrication: { seam, edges } }: Job): boolean {
  return seam.kind !== "butt" || edges.top.kind !== "none" || edges.bottom.kind !== "none";
}

/** One line a place; the two edges of the seam in one. */
function sumsOf({ allowances }: FabricatedPiece, figures: Figures, words: BlankWords): string[] {
  const at = (place: "top" | "bottom" | "seam-start" | "seam-end") => allowances.find((one) => one.place === place);
  const ends = (["top", "bottom"] as const).flatMap((place) => {
    const one = at(place);
    return one ? [`${words.place[place]}: ${allowanceSum(one, figures, words)}`] : [];
  });
  const [start, end] = [at("seam-start"), at("seam-end")];
  const either = start ?? end;
  if (!either) return ends;
  const parts = start && end ? joined(start.parts, end.parts) : either.parts;
  const whole = allowanceSum({ ...either, parts, width: (start?.width ?? 0) + (end?.width ?? 0) }, figures, words);
  const apart = start && end ? ` (${figures.length(start.width)} + ${figures.length(end.width)})` : "";
  return [...ends, `${words.place[either.place]}: ${whole}${apart}`];
}

/** Parts of two allowances made of the same sizes, their factors added. */
function joined(a: readonly AllowancePart[], b: readonly AllowancePart[]): AllowancePart[] {
  return a.map((part, i) => ({ ...part, factor: part.factor + (b[i]?.factor ?? 0) }));
}
