// Text that has no room beside a drawing: pages of its own.

import { growBox } from "../box";
import type { Layout } from "../sheets/layouts";
import { PITCH, lettered, linesOf } from "./lessonText";
import { type SheetBody, sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";

/** Longest line, and air to the frame, mm. */
const LINE = 150, AIR = 6;

/** As many pages as the paragraphs take. */
export function textBodies(lesson: LessonSheets, layout: Layout, paragraphs: readonly string[]): SheetBody[] {
  const { frame, corner } = sheetRoom(lesson, layout, null);
  const room = growBox(frame, -AIR);
  const height = room.top - corner.top - AIR;
  const bodies: SheetBody[] = [];
  let rest = linesOf(paragraphs, Math.min(LINE, room.right - room.left));
  while (rest.length > 0) {
    const from = (rest[0]?.down ?? 0) - PITCH;
    const beyond = rest.findIndex(({ down }) => down - from > height);
    const fits = beyond < 0 ? rest.length : Math.max(1, beyond);
    const own = rest.slice(0, fits).map((line) => ({ ...line, down: line.down - from }));
    bodies.push({ scale: null, items: lettered(own, { x: room.left, y: room.top }) });
    rest = rest.slice(fits);
  }
  return bodies;
}
