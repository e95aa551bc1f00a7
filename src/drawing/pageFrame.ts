// A page of a template: margins, rulers on both axes, a strip of words; the rest is for the pattern.

import type { Vec2 } from "../core/index";
import type { Box } from "./box";
import type { Item } from "./display";
import { LETTERING } from "./lettering";
import { INCHES, MILLIMETRES, ruler } from "./ruler";
import { polygon } from "./strokes";
import { wrapText } from "./wrapText";

/** Printers leave 4 to 7 mm at the edges. */
export const MARGIN = 10;

/** Room for a ruler with its figures, and the pitch of text lines, mm. */
const RULER_LEFT = 15, RULER_BELOW = 10, PITCH = 6, AIR = 2;

/** Width of the words when they stand beside the pattern, mm. */
const COLUMN = 70;

export interface PageFrame {
  /** Frame, rulers and words. */
  readonly items: readonly Item[];
  /** Where the pattern may be drawn. */
  readonly room: Box;
}

/**
 * Frame, rulers and text of a page of the given size (mm), the words below the pattern or in a column to its right; inch rulers
 * stand beside those in mm when `inches`.
 */
export function pageFrame(width: number, height: number, sentences: readonly string[], inches: boolean, words: "below" | "right" = "below"): PageFrame {
  const frame: Box = { left: MARGIN, right: width - MARGIN, bottom: MARGIN, top: height - MARGIN };
  const block = words === "below" ? stripBelow(frame, sentences) : columnRight(frame, sentences);
  const field: Box = words === "below" ? { ...frame, bottom: block.box.top } : { ...frame, right: block.box.left };
  const scales = inches ? [MILLIMETRES, INCHES] : [MILLIMETRES];
  const left = field.left + AIR, below = field.bottom + AIR;
  const rulers = scales.flatMap((scale, i) => [
    ...ruler({ x: left + scales.length * RULER_LEFT, y: below + i * RULER_BELOW }, scale, "level"),
    ...ruler({ x: left + i * RULER_LEFT, y: below + scales.length * RULER_BELOW }, scale, "upright"),
  ]);
  return {
    items: [polygon("ruler", cornersOf(block.box)), polygon("frame", cornersOf(frame)), ...block.items, ...rulers],
    room: { left: left + scales.length * RULER_LEFT, right: field.right - AIR, bottom: below + scales.length * RULER_BELOW, top: field.top - AIR },
  };
}

function stripBelow(frame: Box, sentences: readonly string[]): { items: Item[]; box: Box } {
  const lines = sentences.flatMap((sentence) => wrapText(sentence, frame.right - frame.left - 2 * AIR, LETTERING));
  const top = frame.bottom + lines.length * PITCH + 1.5 * AIR;
  return { items: linesFrom(lines, { x: frame.left + AIR, y: top }), box: { ...frame, top } };
}

/** Sentences apart from each other, from the top of the column. */
function columnRight(frame: Box, sentences: readonly string[]): { items: Item[]; box: Box } {
  const left = frame.right - COLUMN;
  const lines = sentences.flatMap((sentence) => [...wrapText(sentence, COLUMN - 2 * AIR, LETTERING), ""]);
  return { items: linesFrom(lines, { x: left + AIR, y: frame.top }), box: { ...frame, left } };
}

function linesFrom(lines: readonly string[], { x, y }: Vec2): Item[] {
  return lines.flatMap((text, i): Item[] => text === "" ? [] : [{
    kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x, y: y - (i + 1) * PITCH + AIR / 2 },
  }]);
}

function cornersOf(box: Box): Vec2[] {
  return [{ x: box.left, y: box.bottom }, { x: box.right, y: box.bottom }, { x: box.right, y: box.top }, { x: box.left, y: box.top }];
}
