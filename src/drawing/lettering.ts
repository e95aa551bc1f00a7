// How much room does lettering take? Widths are those of the typeface B612, which the app serves; other faces of ordinary
// width stay within a tenth of them.

import type { Vec2 } from "../core/index";
import { type Box, boxOfPoints } from "./box";
import type { TextItem } from "./display";

/** Smallest lettering height for figures on a drawing, mm (ISO habit). */
export const LETTERING = 3.5;

/** Height of a capital over the size of the typeface. */
export const CAP_HEIGHT = 0.75;

/** How far tails reach under the base line, in capital heights. */
const TAIL = 0.3;

/** Advance over type size; everything not listed is `OTHER` wide. Measured from the typeface. */
const ADVANCE: Readonly<Record<string, number>> = widths({
  "0.25": ",;·", "0.3": ".:ijI°", "0.35": " !l", "0.4": "frt\"", "0.45": "()-[]s", "0.5": "=cz", "0.55": "/ex?kvyFLS",
  "0.75": "wN", "0.8": "×OQ", "0.9": "%mMW",
});
const OTHER = 0.65;

function widths(table: Record<string, string>): Record<string, number> {
  return Object.fromEntries(Object.entries(table).flatMap(([width, letters]) => [...letters].map((letter) => [letter, Number(width)])));
}

/** Width in mm of a text of the given capital height. */
export function textWidth(text: string, height: number): number {
  let sum = 0;
  for (const letter of text) sum += ADVANCE[letter] ?? OTHER;
  return (sum * height) / CAP_HEIGHT;
}

/** The box around a text item, tails included; of a turned text, the box around its turned box. */
export function textBox({ at, text, height, align, turn }: TextItem): Box {
  const width = textWidth(text, height);
  const left = align === "start" ? 0 : align === "middle" ? -width / 2 : -width;
  const tail = /[,;()gjpqy]/.test(text) ? TAIL * height : 0;
  if (turn === 0) return { left: at.x + left, right: at.x + left + width, bottom: at.y - tail, top: at.y + height };
  const corners: Vec2[] = [
    { x: left, y: -tail }, { x: left + width, y: -tail }, { x: left, y: height }, { x: left + width, y: height },
  ];
  const cos = Math.cos(turn), sin = Math.sin(turn);
  return boxOfPoints(corners.map(({ x, y }) => ({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos })));
}
