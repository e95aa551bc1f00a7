// School sheets of one job, ready for paper.

import type { Piece, Problem } from "../../core/index";
import type { Item } from "../display";
import type { Page } from "../sheets/page";
import { type Layout, layoutsFor } from "../sheets/layouts";
import { setupProblems } from "../sheets/setupProblems";
import { cardPages } from "./cardPages";
import { figureBlocks, figureBodies, keyBlocks } from "./figureBodies";
import { givenItems } from "./givenItems";
import { type KeyDrawing, keyDrawing } from "./keyDrawing";
import { lessonLayout } from "./lessonLayout";
import { type SheetBody, sheetPages } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import type { LessonLayout } from "./placedOn";
import { qrItems } from "./qrItems";
import { roomItems } from "./roomItems";
import { startedItems } from "./startedItems";
import { stepPages } from "./stepPages";
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
  const { kind } = lesson;
  if (kind === "stationTable") return plainPages(lesson, piece);
  if (kind === "card") {
    const card = cardPages(lesson);
    return card ? made(lesson, card.layout, [card.body]) : noScale(lesson);
  }
  if (kind === "steps") {
    const pictures = stepPages(lesson);
    return pictures ? made(lesson, pictures.layout, pictures.bodies) : { ok: false, problems: [{ code: "paper-without-room", field: "paper" }] };
  }
  return drawnPages(lesson, piece);
}

function made(lesson: LessonSheets, layout: Layout, bodies: readonly SheetBody[]): LessonOutcome {
  const { paper, landscape } = layout;
  return { ok: true, pages: sheetPages(lesson, layout, bodies), paper: paper.name, landscape, scale: bodies[0]?.scale ?? null };
}

function noScale({ scale }: LessonSheets): LessonOutcome {
  return { ok: false, problems: [{ code: "scale-too-large", field: "scale", ...(scale !== null && { value: scale }) }] };
}

/** Question, question begun and key. */
function drawnPages(lesson: LessonSheets, piece: Piece): LessonOutcome {
  const placed = lessonLayout(lesson, piece);
  if (!placed) return noScale(lesson);
  const { kind, development, way, figures } = lesson;
  if (kind !== "key") return made(lesson, placed.layout, drawingBodies(lesson, placed, givenOn(lesson, placed, piece)));
  return made(lesson, placed.layout, keyBodies(lesson, placed, piece, keyDrawing(placed, development, piece, { way, figures })));
}

/** The key, its tables beside it or on pages of their own. */
function keyBodies(lesson: LessonSheets, placed: LessonLayout, piece: Piece, key: KeyDrawing): SheetBody[] {
  const [drawing, ...text] = drawingBodies(lesson, placed, key.items);
  const { frame, taken } = placed;
  const beside = keyBlocks(lesson, piece, placed.layout, key.left, { frame, taken: [...taken, key.taken] });
  const tables = figureBodies(lesson, placed.layout, beside.rest);
  // A table the drawing refers to comes next.
  return [{ scale: placed.scale, items: [...(drawing?.items ?? []), ...beside.items] }, ...(key.left.length > 0 ? [...tables, ...text] : [...text, ...tables])];
}

/** The station table, on upright paper where that may be chosen. */
function plainPages(lesson: LessonSheets, piece: Piece): LessonOutcome {
  const [layout] = layoutsFor(lesson.setup, { width: TABLE, height: TABLE });
  if (!layout) throw new RangeError("no paper");
  return made(lesson, layout, figureBodies(lesson, layout, figureBlocks(lesson, piece, layout)));
}

/** As long as a page of tables on a roll is cut, mm. */
const TABLE = 400;

/** The development in the angle asked for. */
function inAngle(lesson: LessonSheets): LessonSheets {
  const { development, projection } = lesson;
  if (projection === null) return lesson;
  return { ...lesson, development: { ...development, job: { ...development.job, drawing: { ...development.job.drawing, projection } } } };
}

/** The drawing, and pages for the text it has no room for. */
function drawingBodies(lesson: LessonSheets, { layout, scale, text, code }: LessonLayout, drawn: readonly Item[]): SheetBody[] {
  const { qr } = lesson;
  return [{ scale, items: [...drawn, ...(text?.items ?? []), ...(qr && code ? qrItems(qr, code) : [])] }, ...(text ? [] : textBodies(lesson, layout, lesson.text))];
}

/** What a question shows. */
function givenOn(lesson: LessonSheets, placed: LessonLayout, piece: Piece): Item[] {
  const { kind, development, views: { found }, started } = lesson;
  const { board } = placed;
  const numbered = kind === "started" && started === "numbered";
  const begun = kind === "started" ? startedItems(board, development, piece, started) : [];
  return [...givenItems(board, development, piece, { found, numbered }), ...roomItems(placed, lesson.words.lesson), ...begun];
}
