// Rulers on both axes of every school sheet, and what sheet it is.

import { textWidth } from "../lettering";
import { type PageBands, pageBands } from "../sheets/pageBands";
import type { PaperField } from "../sheets/paperField";
import type { NamedPaper } from "../sheets/section";
import { correctionText } from "../sheets/sheetContext";
import { LESSON_KINDS, type LessonKind } from "./lessonKinds";
import type { LessonSheets } from "./lessonSheets";

/** The bands of a page of this paper; whatever its kind, they leave the same room. */
export function lessonBands(lesson: LessonSheets, { box }: Pick<PaperField, "box">, paper: NamedPaper, sheet = ""): PageBands {
  const { setup, words, kind } = lesson;
  const correction = correctionText({ setup, words: words.sheet }, paper.name);
  const longest = LESSON_KINDS.map((one) => headingOf(lesson, one)).reduce((best, one) => (textWidth(one, 1) > textWidth(best, 1) ? one : best));
  return pageBands(box, { name: "", check: words.lesson.checkRuler, correction, heading: headingOf(lesson, kind), longest, sheet });
}

function headingOf({ words: { sheet, lesson: said }, school, development: { job } }: LessonSheets, kind: LessonKind): string {
  return `${school.title.trim() || job.title.trim() || sheet.untitled} · ${said.kinds[kind]}`;
}
