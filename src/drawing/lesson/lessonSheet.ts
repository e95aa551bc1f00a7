// Any page of school sheets: bands with rulers, frame, title block in the lower right corner, and what is drawn on it.

import type { Box } from "../box";
import type { Item } from "../display";
import type { Layout } from "../sheets/layouts";
import type { Page } from "../sheets/page";
import { type PaperField, paperField } from "../sheets/paperField";
import { pageOn } from "../sheets/section";
import { corners } from "../sheets/titleBlock";
import { polygon } from "../strokes";
import { lessonBands } from "./lessonBands";
import { lessonBlock } from "./lessonBlock";
import type { LessonSheets } from "./lessonSheets";
import type { LessonKind } from "./lessonKinds";

/** The width of a title block (ISO 7200), mm; on small paper that lies no more than a part of the frame, so that views stand beside it. */
const BLOCK = 180, SMALL = 200, PART = 0.62;

export interface SheetRoom {
  readonly field: PaperField;
  /** Inside the bands, mm. */
  readonly frame: Box;
  /** Where the title block stands. */
  readonly corner: Box;
}

/** One page without its frame; `scale` is paper mm a real mm, null when nothing is drawn to scale. */
export interface SheetBody {
  readonly items: readonly Item[];
  readonly scale: number | null;
}

/** The room on a page of this paper; `scale` as its title block will say it. */
export function sheetRoom(lesson: LessonSheets, { paper, landscape }: Layout, scale: number | null): SheetRoom {
  const field = paperField(paper, landscape, lesson.setup);
  const { room: frame } = lessonBands(lesson, field, paper);
  const room = frame.right - frame.left;
  const width = Math.min(BLOCK, room > SMALL ? PART * room : room);
  const height = Math.max(...alike(lesson.kind).map((kind) => lessonBlock({ ...lesson, kind }, width, scale).height));
  return { field, frame, corner: { left: frame.right - width, right: frame.right, bottom: frame.bottom, top: frame.bottom + height } };
}

/** Kinds of sheets that lie over one another line by line. */
function alike(kind: LessonKind): readonly LessonKind[] {
  return kind === "question" || kind === "started" || kind === "key" ? ["question", "started", "key"] : [kind];
}

/** The pages of these bodies, numbered. */
export function sheetPages(lesson: LessonSheets, layout: Layout, bodies: readonly SheetBody[]): Page[] {
  const { words: { sheet } } = lesson;
  return bodies.map(({ items, scale }, i) => {
    const { field, frame, corner } = sheetRoom(lesson, layout, scale);
    const number = sheet.sheetOf(i + 1, bodies.length);
    const block = lessonBlock(lesson, corner.right - corner.left, scale);
    return pageOn(field, String(i + 1), [
      ...lessonBands(lesson, field, layout.paper, number).items, polygon("frame", corners(frame)), ...block.at({ x: corner.left, y: corner.bottom }), ...items,
    ]);
  });
}
