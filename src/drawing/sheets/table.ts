// A table on paper: as wide as its columns ask, heads in two lines where they are long.

import type { Vec2 } from "../../core/index";
import type { Item } from "../display";
import { LETTERING, textWidth } from "../lettering";
import { polygon, stroke } from "../strokes";
import { wrapText } from "../wrapText";
import { corners } from "./titleBlock";

export interface Column {
  readonly head: string;
  readonly align: "start" | "end";
  /** Its texts are wrapped at this width, mm. */
  readonly most?: number;
}

export interface Table {
  readonly width: number;
  readonly height: number;
  /** The table with its top left corner there. */
  readonly at: (corner: Vec2) => Item[];
}

/** Round a text, mm. */
const AIR = 1.5;

/** Pitch of lines over the height of letters. */
const PITCHED = 1.57;

/** Height of the letters of heads, mm, and the width that heads are wrapped at unless the column is wider. */
const HEAD = 2.5, HEAD_WIDTH = 16;

/** Rows of texts under heads; `last` sets the last row apart as a sum; `heads` is the height of the letters of heads, mm. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[], { last = false, heads: size = HEAD } = {}): Table {
  const pitch = PITCHED * LETTERING;
  const lines = rows.map((row) => row.map((text, i) => wrapText(text, columns[i]?.most ?? Infinity, LETTERING)));
  const widths = columns.map(({ head }, i) => {
    const body = Math.max(0, ...lines.flatMap((row) => (row[i] ?? []).map((line) => textWidth(line, LETTERING))));
    const words = head.split(" ").map((word) => textWidth(word, size));
    return Math.max(body, ...words, Math.min(HEAD_WIDTH, textWidth(head, size))) + 2 * AIR;
  });
  const heads = columns.map(({ head }, i) => wrapText(head, (widths[i] ?? 0) - 2 * AIR + 0.01, size));
  const headHeight = Math.max(1, ...heads.map(({ length }) => length)) * size * 1.4 + AIR;
  const heights = lines.map((row) => Math.max(1, ...row.map(({ length }) => length)) * pitch + AIR / 2);
  const width = sum(widths), height = headHeight + sum(heights);
  const at = (corner: Vec2): Item[] => {
    const lefts = widths.map((_, i) => corner.x + sum(widths.slice(0, i)));
    const tops = heights.map((_, i) => corner.y - headHeight - sum(heights.slice(0, i)));
    const letters = (text: string, column: number, y: number, height: number): Item => {
      const { align } = columns[column] ?? { align: "start" };
      const x = (lefts[column] ?? 0) + (align === "start" ? AIR : (widths[column] ?? 0) - AIR);
      return { kind: "text", pen: "lettering", text, height, align, turn: 0, at: { x, y } };
    };
    return [
      polygon("ruler", corners({ left: corner.x, right: corner.x + width, bottom: corner.y - height, top: corner.y })),
      ...lefts.slice(1).map((x) => stroke("ruler", { x, y: corner.y }, { x, y: corner.y - height })),
      stroke("contour", { x: corner.x, y: corner.y - headHeight }, { x: corner.x + width, y: corner.y - headHeight }),
      ...heads.flatMap((wrapped, i) => wrapped.map((text, line) => letters(text, i, corner.y - AIR / 2 - (line + 1) * size * 1.4 + size * 0.2, size))),
      ...lines.flatMap((row, r) => row.flatMap((wrapped, i) => wrapped.map((text, line) => letters(text, i, (tops[r] ?? 0) - (line + 1) * pitch + (pitch - LETTERING) / 2 - AIR / 4, LETTERING)))),
      ...tops.slice(1).map((y, i) => stroke(last && i === tops.length - 2 ? "contour" : "ruler", { x: corner.x, y }, { x: corner.x + width, y })),
    ];
  };
  return { width, height, at };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, one) => total + one, 0);
}
