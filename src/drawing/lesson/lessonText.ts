// Paragraphs on a sheet: in which room do they stand, how wide, and their lines.

import type { Vec2 } from "../../core/index";
import { type Box, EMPTY_BOX } from "../box";
import type { Item } from "../display";
import { freeBox } from "../freeBox";
import { LETTERING } from "../lettering";
import { wrapText } from "../wrapText";

/** Widths tried, mm: those that read best first. */
const WIDTHS = [120, 100, 150, 172, 85, 70, 58];

/** The pitch of lines, mm; paragraphs stand apart by a part of it. */
export const PITCH = 5.5;
const APART = 0.4;

/** Round the text, mm. */
const AIR = 2.5;

export interface PlacedText {
  readonly items: readonly Item[];
  readonly taken: Box;
}

/** The paragraphs in the free part of a window, as wide as it takes; null where there is no room. Nothing takes no room. */
export function placedText(paragraphs: readonly string[], window: Box, taken: readonly Box[]): PlacedText | null {
  if (paragraphs.every((one) => one.trim() === "")) return { items: [], taken: EMPTY_BOX };
  for (const width of WIDTHS) {
    const lines = linesOf(paragraphs, width);
    const height = lines.at(-1)?.down ?? 0;
    const free = freeBox(window, taken, { width: width + 2 * AIR, height: height + 2 * AIR });
    if (!free) continue;
    const at = { x: free.left + AIR, y: free.top - AIR };
    return { items: lettered(lines, at), taken: { left: free.left, right: free.left + width + 2 * AIR, top: free.top, bottom: free.top - height - 2 * AIR } };
  }
  return null;
}

interface Line {
  readonly text: string;
  /** From the top of the text to the foot of the line, mm. */
  readonly down: number;
}

/** Lines of all paragraphs at a width, mm. */
export function linesOf(paragraphs: readonly string[], width: number): Line[] {
  let down = 0;
  return paragraphs.flatMap((paragraph, i) => {
    if (i > 0) down += APART * PITCH;
    return wrapText(paragraph, width, LETTERING).map((text) => {
      down += PITCH;
      return { text, down };
    });
  });
}

/** The lines with their top left corner there. */
export function lettered(lines: readonly Line[], { x, y }: Vec2): Item[] {
  return lines.map(({ text, down }) => ({ kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x, y: y - down + PITCH - LETTERING } }));
}
