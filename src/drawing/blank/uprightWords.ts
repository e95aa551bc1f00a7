// Words along upright lines: the names of the quarters, the seam beside its edges, top and roll at their arrows.

import type { Mark, Segment, Vec2 } from "../../core/index";
import { segmentPoint } from "../../core/index";
import type { ClearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";
import type { Metrics } from "../metrics";
import type { BlankWords } from "./blankWords";
import type { CutSheet } from "./cutSheet";
import { type Lettered, firstFree } from "./firstFree";

/** Shares of a line's length at which its word is tried. */
const SHARES = [0.3, 0.4, 0.2, 0.6, 0.7, 0.5, 0.8, 0.1, 0.9];

/** The name of every quarter, beside its line and read from the right. */
export function quarterNames(marks: readonly Mark[], sheet: CutSheet, space: ClearSpace, metrics: Metrics, words: BlankWords): Item[] {
  return marks.flatMap((mark) => (mark.kind === "quarter" ? besideUpright(mark.line, words.direction[mark.direction], SHARES, sheet, space, metrics) : []));
}

/** The word beside each edge or line of the seam, on the sheet's own side. */
export function seamWords(edges: readonly Segment[], sheet: CutSheet, space: ClearSpace, metrics: Metrics, words: BlankWords): Item[] {
  return edges.flatMap((edge) => besideUpright(edge, words.seam, [0.6, 0.5, 0.7, 0.4, 0.8, 0.2], sheet, space, metrics));
}

/** Beside the point of the arrow to the top, and over the middle of the arrow of rolling. */
export function arrowWords(marks: readonly Mark[], space: ClearSpace, { lettering, gap }: Metrics, words: BlankWords): Item[] {
  return marks.flatMap((mark): Item[] => {
    if (mark.kind === "top") {
      const { x, y } = mark.line.to;
      return firstFree([{ text: level(words.top, { x: x + 2 * gap, y: y - lettering }, "start", lettering) }, { text: level(words.top, { x: x - 2 * gap, y: y - lettering }, "end", lettering) }], space);
    }
    if (mark.kind !== "rolling") return [];
    const along = [0.75, 0.25, 0.5].map((share) => segmentPoint(mark.line, share));
    return firstFree(along.flatMap(({ x, y }) => [gap, -gap - lettering].map((up) => ({ text: level(words.rolled, { x, y: y + up }, "middle", lettering) }))), space);
  });
}

function level(text: string, at: Vec2, align: TextItem["align"], height: number): TextItem {
  return { kind: "text", pen: "lettering", text, height, align, turn: 0, at };
}

function besideUpright(line: Segment, text: string, shares: readonly number[], sheet: CutSheet, space: ClearSpace, { lettering, gap }: Metrics): Item[] {
  const choices = shares.flatMap((share): Lettered[] => {
    const { x, y } = segmentPoint(line, share);
    return [x - gap, x + gap + lettering].filter((base) => sheet.holds({ x: base - lettering / 2, y })).map((base) => ({
      text: { kind: "text", pen: "lettering", text, height: lettering, align: "middle", turn: Math.PI / 2, at: { x: base, y } },
    }));
  });
  return firstFree(choices, space);
}
