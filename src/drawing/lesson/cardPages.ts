// A card model on one sheet, at the largest usual scale that takes the pattern, its discs and what is to be done.

import { type Box, boxOfPoints, growBox } from "../box";
import type { Item } from "../display";
import { freeBox } from "../freeBox";
import { moveItem } from "../moveItem";
import { SCALES, scaleText } from "../sheets/scales";
import { type Layout, layoutsFor } from "../sheets/layouts";
import { type CardPart, cardParts } from "./cardParts";
import { type SheetBody, sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { placedText } from "./lessonText";

/** Between parts and to the frame, mm. */
const AIR = 4;

/** As long as a sheet cut from a roll is made, mm. */
const ROLL = 600;

/** The sheet and its paper; null when no scale, or not the one asked for, fits. */
export function cardPages(lesson: LessonSheets): { readonly layout: Layout; readonly body: SheetBody } | null {
  const layouts = layoutsFor(lesson.setup, { width: ROLL, height: ROLL });
  const { words: { lesson: said } } = lesson;
  const [piece] = lesson.development.pieces;
  for (const scale of lesson.scale === null ? SCALES : [lesson.scale]) {
    const heading = said.card.heading(scaleText(scale));
    const most = (piece?.pattern.girth ?? Infinity) * scale;
    const wide = layouts.filter((layout) => most < Math.max(layout.paper.width, layout.paper.height));
    if (wide.length === 0) continue;
    const parts = cardParts(lesson.development, scale, heading, said);
    for (const layout of wide) {
      const text = [...(isWritten(parts, heading) ? [] : [heading]), said.card.make(parts.length > 1)];
      const items = placed(lesson, layout, scale, parts, text);
      if (items) return { layout, body: { items, scale } };
    }
  }
  return null;
}

/** Whether the heading found room on a part. */
function isWritten(parts: readonly CardPart[], heading: string): boolean {
  return parts.some(({ items }) => items.some((item) => item.kind === "text" && item.text === heading));
}

/** Every part in the free room, one after the other, then the text. */
function placed(lesson: LessonSheets, layout: Layout, scale: number, parts: readonly CardPart[], text: readonly string[]): Item[] | null {
  const { frame, corner } = sheetRoom(lesson, layout, scale);
  const window = growBox(frame, -AIR / 2);
  const taken: Box[] = [corner];
  const items: Item[] = [];
  for (const { items: own, bounds: { left, right, bottom, top } } of parts) {
    const free = freeBox(window, taken, { width: right - left + AIR, height: top - bottom + AIR });
    if (!free) return null;
    const at = { x: free.left + AIR / 2, y: free.top - AIR / 2 };
    items.push(...own.map((item) => moveItem(item, { x: at.x - left, y: at.y - top })));
    taken.push(growBox(boxOfPoints([at, { x: at.x + right - left, y: at.y - top + bottom }]), AIR / 2));
  }
  const said = placedText(text, window, taken);
  return said && [...items, ...said.items];
}
