// School sheets of one job, ready for paper.

import type { Piece, Problem } from "../../core/index";
import type { Page } from "../sheets/page";
import { setupProblems } from "../sheets/setupProblems";
import { givenItems } from "./givenItems";
import { type LessonLayout, lessonLayout } from "./lessonLayout";
import { type SheetBody, sheetPages } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { roomItems } from "./roomItems";
import { textBodies } from "./textBodies";

export type LessonOutcome =
  | {
    readonly ok: true;
    readonly pages: readonly Page[];
    /** "A4", or its size. */
    readonly paper: string;
    readonly landscape: boolean;
    /** Paper mm a real mm of the drawing; null for sheets without one. */
    readonly scale: number | null;
  }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The pages of one kind of sheet, or what stands in their way: bad paper, a scale that does not fit with the text, nothing to draw. */
export function lessonPages(asked: LessonSheets): LessonOutcome {
  const faults = setupProblems(asked.setup);
  if (faults.length > 0) return { ok: false, problems: faults };
  const lesson = inAngle(asked);
  const [piece] = lesson.development.pieces;
  if (!piece) return { ok: false, problems: [{ code: "nothing-to-print", field: "" }] };
  const placed = lessonLayout(lesson, piece);
  if (!placed) return { ok: false, problems: [{ code: "scale-too-large", field: "scale", ...(lesson.scale !== null && { value: lesson.scale }) }] };
  const { layout: { paper, landscape }, scale } = placed;
  return { ok: true, pages: sheetPages(lesson, placed.layout, drawingBodies(lesson, placed, piece)), paper: paper.name, landscape, scale };
}

/** The development in the angle asked for. */
function inAngle(lesson: LessonSheets): LessonSheets {
  const { development, projection } = lesson;
  if (projection === null) return lesson;
  return { ...lesson, development: { ...development, job: { ...development.job, drawing: { ...development.job.drawing, projection } } } };
}

/** The drawing, and pages for the text it has no room for. */
function drawingBodies(lesson: LessonSheets, placed: LessonLayout, piece: Piece): SheetBody[] {
  const { board, layout, scale, text } = placed;
  const items = [...givenItems(board, lesson.development, piece, { found: lesson.views.found, numbered: false }), ...roomItems(placed, lesson.words.lesson), ...(text?.items ?? [])];
  return [{ scale, items }, ...(text ? [] : textBodies(lesson, layout, lesson.text))];
}
