import { allLessonWords } from "../../drawing/lesson/lessonWords";
import { DEFAULT_LESSON, type LessonSheets } from "../../drawing/lesson/lessonSheets";
import { sentencesOf } from "../describe/sentenceText";
import { setupOf, useOutput } from "../output/choices";
import type { Format } from "../quantity/format";
import type { OfPiece } from "./classSet";

/** The sheet of one student's piece, on the paper chosen for printing. */
export function lessonOfPiece({ kind, development, name, className, title, code, qr, scale }: OfPiece, format: Format): LessonSheets {
  const { marking } = development.job;
  const sum = marking.items.reduce((total, { marks }) => total + Math.max(0, marks), 0);
  const text = sentencesOf(development.job, ({ value, quantity }) => `${format.field(value, quantity)}${quantity === "angle" ? "°" : ""}`, format.trade).join(" ");
  return {
    ...DEFAULT_LESSON, development, kind, setup: setupOf(useOutput.getState()), words: allLessonWords(format.trade), figures: format, text: [text], code, qr, scale,
    school: { ...DEFAULT_LESSON.school, title, name, className, marksMax: sum > 0 ? sum : null },
    marking: marking.items, tolerance: { length: marking.tolerance, angle: marking.angle },
  };
}
