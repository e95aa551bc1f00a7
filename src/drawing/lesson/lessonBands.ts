// Rulers on both axes of every school sheet, and what sheet it is.

import { type PageBands, pageBands } from "../sheets/pageBands";
import type { PaperField } from "../sheets/paperField";
import type { NamedPaper } from "../sheets/section";
import { correctionText } from "../sheets/sheetContext";
import type { LessonSheets } from "./lessonSheets";

/** The bands of a page of this paper. */
export function lessonBands({ setup, words }: LessonSheets, { box }: Pick<PaperField, "box">, paper: NamedPaper, heading: string, sheet: string): PageBands {
  const correction = correctionText({ setup, words: words.sheet }, paper.name);
  return pageBands(box, { name: "", check: words.lesson.checkRuler, correction, heading, sheet });
}
