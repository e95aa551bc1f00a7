import type { ParsedQuantity, Problem } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import type { Quantity } from "../quantity/format";

// What is said about bad input: one sentence a problem, in the words of the person who typed it.

/** Writes a number with its unit. */
export type ShowValue = (value: number) => string;

/** How numbers are written: a bound or a value as the field itself would, a length on the pattern as drawings do. */
export interface Shows {
  readonly field: ShowValue;
  readonly length: ShowValue;
}

/** The sentence for this problem. */
export function problemSentence(problem: Problem, { field: show, length }: Shows, trade: TradeWords): string {
  const { code, min, max, detail } = problem;
  switch (code) {
    case "not-a-job":
      return "This is not a Flatwright job.";
    case "newer-version":
      return "This job was saved by a newer Flatwright. Update the program to open it.";
    case "unknown-version":
      return "This job names a version that does not exist.";
    case "missing":
      return `Something is missing: ${problem.field}.`;
    case "wrong-type":
      return "This is not the kind of value that belongs here.";
    case "not-a-number":
      return "This is not a number.";
    case "too-small":
      if (detail?.low !== undefined) return `The upper height must be over ${show(Number(detail.low))}.`;
      return min === undefined ? "This is too small." : `At least ${show(min)}.`;
    case "too-large":
      if (detail?.marks !== undefined && max !== undefined) return `Only ${show(max)} can be given here: this is not counted.`;
      if (detail?.basis !== undefined && max !== undefined) return `The sheet leaves no bore: under ${show(max)}.`;
      return max === undefined ? "This is too large." : `At most ${show(max)}.`;
    case "not-whole":
      return "A whole number is needed.";
    case "unknown-choice":
      return "This is none of the choices.";
    case "too-long":
      return max === undefined ? "This text is too long." : `At most ${max} characters.`;
    case "too-many":
      return max === undefined ? "There are too many of these." : `At most ${max} of these.`;
    case "unknown-field":
      return `This job holds something unknown: ${problem.field}.`;
    case "duplicate-id":
      return "Two things in this job have the same name.";
    case "file-too-large":
      return "This file is too large to be a job.";
    case "not-json":
      return "This file cannot be read as a job: it is damaged or of another kind.";
    case "nothing-left":
      return "Nothing would be left of the pipe.";
    case "profile-crosses-itself":
      return "The profile crosses itself.";
    case "profile-not-across":
      return "The profile does not go right across the pipe.";
    case "arc-too-small":
      return detail?.needed === undefined ? "The arc is too small to reach." : `The arc is too small to reach: at least ${show(Number(detail.needed))}.`;
    case "arc-centre-off":
      return "This centre is not equally far from both ends of the arc.";
    case "profile-too-short":
      return "The profile is too short to cross the pipe.";
    case "cut-misses":
      return "This misses the pipe: nothing is cut.";
    case "separate-pieces":
      return "The pipe falls into separate pieces; all of them are drawn.";
    case "open-round":
      return `No place on the ${trade.girth} is whole from end to end: the pipe is cut open round.`;
    case "thick-for-diameter":
      return `The sheet is thick for so small a diameter: prove the ${trade.girth} on scrap first.`;
    case "allowance-crosses-itself":
      return `The ${edge(detail)} is too hollow for this width${place(detail, length, trade)}: what is added would cross itself. It is left off.`;
    case "allowance-too-wide":
      return `The ${edge(detail)} is too short for this width and its two notches${place(detail, length, trade)}. It is left off.`;
    case "allowance-meets-outline":
      return `What is added at the ${edge(detail)} would run into another edge${place(detail, length, trade)}. It is left off.`;
    case "gap-too-wide":
      return `The root gap would take a whole stretch of the pattern${place(detail, length, trade)}. It is left off.`;
    case "plate-not-flat":
      return "No plate closes this end: its cuts do not meet in straight lines across the pipe.";
    case "plate-gap-too-wide":
      return "The gap leaves nothing of the plate.";
    case "paper-without-room":
      if (detail?.document !== undefined) return `This paper is too small for “${detail.document}”: choose larger paper or a smaller margin.`;
      return min === undefined ? "The margins leave no room on this paper." : `Within its margins this paper has only ${show(Number(problem.value))} one way: rulers and drawing take ${show(min)} each way.`;
    case "overlap-too-large":
      return max === undefined ? "The overlap is too large for this paper." : `The overlap is too large for this paper: at most ${show(max)}.`;
    case "correction-too-large":
      return "A printer that is off by more than 5 % prints to fit the page: print at actual size and measure again.";
    case "scale-too-large":
      return "The drawing does not fit this paper at this scale.";
    case "too-many-sheets":
      return max === undefined ? "This would take too many sheets." : `This would take ${Number(problem.value)} sheets, more than ${max}: choose larger paper.`;
    case "nothing-to-print":
      return "There is nothing to print.";
    case "points-too-few":
      return `At least ${min} known points are needed.`;
    case "points-coincide":
      return `Points ${detail?.first} and ${detail?.second} stand in the same place.`;
    case "points-in-line":
      return "The points lie in one line, all but one: mark points that lie all round the drawing.";
    case "points-crossed":
      return "No camera sees the points in this order: two of them have changed places, or the picture is reversed.";
    case "points-unsure":
      return "The points lie too close together or too near a line to fix the whole drawing: mark points that lie all round it.";
    case "base-too-short":
      return "The base line has no length: mark both its ends.";
  }
}

/** Which edge of the pattern is meant. */
const EDGES: Readonly<Record<string, string>> = { top: "top edge", bottom: "bottom edge", "seam-start": "first edge of the seam", "seam-end": "last edge of the seam" };

function edge(detail: Problem["detail"]): string {
  return EDGES[detail?.place ?? ""] ?? "edge";
}

/** Where on the pattern, when the problem says so. */
function place(detail: Problem["detail"], length: ShowValue, trade: TradeWords): string {
  if (detail?.girth === undefined || detail.height === undefined) return "";
  return `, ${length(Number(detail.girth))} along the ${trade.girth} and ${length(Number(detail.height))} up`;
}

type QuantityReason = Extract<ParsedQuantity, { ok: false }>["reason"];

/** What is said about text that is no quantity. */
export function quantitySentence(reason: QuantityReason, kind: Quantity): string {
  switch (reason) {
    case "empty":
      return "Type a number.";
    case "unit":
      return kind === "angle" ? "An angle takes degrees only." : kind === "count" ? "A count takes no unit." : kind === "ratio" ? "A ratio takes no unit." : "This unit is not known: use mm, cm, m, in or ft.";
    case "not-finite":
      return "This has no finite result.";
    case "ambiguous":
      return "This can be read in two ways: leave out the thousands mark.";
    case "dimension":
      return "These measures cannot be combined so: a length times a length is no length.";
    case "too-long":
    case "too-deep":
      return "This is too long to be a number.";
    case "syntax":
      return "This cannot be read as a number. Sums like 180-2*45 and fractions like 1 3/8 may be typed.";
  }
}
