import type { Development } from "../../../core/index";
import { allLessonWords } from "../../../drawing/lesson/lessonWords";
import type { LessonSheets } from "../../../drawing/lesson/lessonSheets";
import type { LessonKind } from "../../../drawing/lesson/lessonKinds";
import { markItems } from "../../../drawing/lesson/markItems";
import { DEFAULT_SETUP, type PrinterCorrection } from "../../../drawing/sheets/setup";
import type { Way } from "../../../drawing/steps/way";
import { sentencesOf } from "../../describe/sentenceText";
import type { Format } from "../../quantity/format";
import { sheetsWords } from "../../words/sheets";
import type { SheetChoices } from "./sheetChoices";

/** What differs from sheet to sheet of a class. Left out, it is as for one sheet of the job on the board. */
export interface OfStudent {
  readonly name?: string;
  readonly className?: string;
  /** Of the exercise; the title of the job unless given. */
  readonly title?: string;
  readonly code?: string;
  readonly qr?: LessonSheets["qr"];
  /** One scale for all; null and left out: as chosen. */
  readonly scale?: number | null;
  readonly correction?: PrinterCorrection | null;
  readonly way?: Way;
}

/** The sheet that a teacher's choices ask for, of any development. */
export function lessonOf(kind: LessonKind, development: Development, choices: SheetChoices, format: Format, student: OfStudent = {}): LessonSheets {
  const { job, pieces: [piece] } = development;
  const { items, tolerance, angle } = job.marking;
  const words = allLessonWords(format.trade);
  const most = items.reduce((sum, { marks }) => sum + Math.max(0, marks), 0);
  const { paper, orientation } = choices;
  return {
    development, kind, words, figures: format,
    setup: { ...DEFAULT_SETUP, paper: { kind: "named", name: paper }, orientation, correction: student.correction ?? null },
    projection: choices.angle, scale: student.scale ?? choices.scale,
    school: { school: choices.school, title: student.title ?? "", name: student.name ?? "", className: student.className ?? choices.className, date: choices.date, marksMax: most > 0 ? most : null },
    text: textOf(development, choices, format),
    code: student.code ?? "", qr: student.qr ?? null,
    marking: piece ? markItems(development, piece, format, words) : [], tolerance: { length: tolerance, angle },
    way: student.way ?? "screen", views: { other: choices.other, found: choices.found }, started: choices.started, stepsPerPage: choices.stepsPerPage,
  };
}

/** The description in one paragraph, and those of the task. */
function textOf({ job }: Development, { described, task }: SheetChoices, format: Format): string[] {
  const sentences = described ? [sentencesOf(job, ({ value, quantity }) => `${format.field(value, quantity)}${quantity === "angle" ? "°" : ""}`, format.trade).join(" ")] : [];
  const lines = (task ?? sheetsWords.usualTask(format.trade)).split("\n").map((line) => line.trim());
  return [...sentences, ...lines].filter((line) => line !== "");
}
