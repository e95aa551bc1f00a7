// Where the development is to be drawn: the corners of the room kept for it, as large as the sheet gives, so that nothing is told of its
// size; and its name.

import { type Box, boxesOverlap } from "../box";
import type { Item } from "../display";
import { LETTERING, textWidth } from "../lettering";
import { stroke } from "../strokes";
import type { LessonLayout } from "./placedOn";
import type { LessonWords } from "./lessonWords";

/** Length of a corner's arms, and air to the frame and to what stands near, mm. */
const ARM = 6, AIR = 3;

/** Corner marks and the word. */
export function roomItems(placed: LessonLayout, words: LessonWords): Item[] {
  const room = roomFor(placed);
  const { left, right, bottom, top } = room;
  const corner = (x: number, y: number, across: 1 | -1, up: 1 | -1): Item[] => [
    stroke("trim", { x, y }, { x: x + across * ARM, y }), stroke("trim", { x, y }, { x, y: y + up * ARM }),
  ];
  return [
    ...corner(left, bottom, 1, 1), ...corner(right, bottom, -1, 1), ...corner(left, top, 1, -1), ...corner(right, top, -1, -1),
    { kind: "text", pen: "lettering", text: words.room, height: LETTERING, align: "start", turn: 0, at: { x: Math.min(left + AIR, right - textWidth(words.room, LETTERING)), y: top - AIR - LETTERING } },
  ];
}

/** From where the pattern begins to the frame, unless something else stands there. */
function roomFor({ board: { blocks: { pattern: { bounds } } }, frame, taken }: LessonLayout): Box {
  const others = taken.filter((box) => !(box.left <= bounds.left && box.right >= bounds.right && box.bottom <= bounds.bottom && box.top >= bounds.top));
  const grown = [{ ...bounds, right: frame.right - AIR, top: Math.min(frame.top - AIR, bounds.top + AIR) }, { ...bounds, top: frame.top - AIR }, { ...bounds, right: frame.right - AIR }];
  return grown.find((box) => !others.some((other) => boxesOverlap(box, other))) ?? bounds;
}
