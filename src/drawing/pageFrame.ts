// A page of a template: margins, rulers on both axes, a strip of words; the rest is for the pattern.

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

export interface PageFrame {
  /** Frame, rulers and words. */
  readonly items: readonly Item[];
  /** Where the pattern may be drawn. */
  readonly room: Box;
}

/** Frame, rulers and text of a page of the given size (mm); inch rulers stand beside those in mm when `inches`. */
export function pageFrame(width: number, height: number, sentences: readonly string[], inches: boolean): PageFrame {
  const frame: Box = { left: MARGIN, right: width - MARGIN, bottom: MARGIN, top: height - MARGIN };
  const lines = sentences.flatMap((sentence) => wrapText(sentence, frame.right - frame.left - 2 * AIR, LETTERING));
  const strip = frame.bottom + lines.length * PITCH + AIR;
  const words = lines.map((text, i): Item => ({
    kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x: frame.left + AIR, y: strip - (i + 1) * PITCH + AIR },
  }));
  const scales = inches ? [MILLIMETRES, INCHES] : [MILLIMETRES];
  const left = frame.left + AIR, below = strip + AIR;
  const rulers = scales.flatMap((scale, i) => [
    ...ruler({ x: left + RULER_LEFT, y: below + i * RULER_BELOW }, scale, "level"),
    ...ruler({ x: left + i * RULER_LEFT, y: below + scales.length * RULER_BELOW }, scale, "upright"),
  ]);
  const corners = (box: Box) => [{ x: box.left, y: box.bottom }, { x: box.right, y: box.bottom }, { x: box.right, y: box.top }, { x: box.left, y: box.top }];
  return {
    items: [polygon("frame", corners(frame)), polygon("ruler", corners({ ...frame, top: strip })), ...words, ...rulers],
    room: { left: left + scales.length * RULER_LEFT, right: frame.right - AIR, bottom: below + scales.length * RULER_BELOW, top: frame.top - AIR },
  };
}
