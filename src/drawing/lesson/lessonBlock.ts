// The title block of a school sheet: school, exercise, who drew it, when, for how many marks; scale, projection, seam.

import { LETTERING } from "../lettering";
import { projectionSymbol } from "../projectionSymbol";
import { scaleText } from "../sheets/scales";
import { type Cell, type TitleBlock, titleBlock } from "../sheets/titleBlock";
import type { LessonSheets } from "./lessonSheets";
import type { LessonKind } from "./lessonKinds";
import { seamText } from "./seamText";

/** Sheets a student is marked by. */
const MARKED: readonly LessonKind[] = ["question", "started", "key"];

/** Room to write a name, a class, a date in, as spaces. */
const blank = (spaces: number) => " ".repeat(spaces);

/** The block, `width` mm wide, of one page; `scale` null for pages without one. The band below says which sheet it is. */
export function lessonBlock({ development: { job }, kind, school, words, code, figures, projection }: LessonSheets, width: number, scale: number | null): TitleBlock {
  const { field, marksOf, kinds } = words.lesson;
  const { stations } = job.development;
  const title = school.title.trim() || job.title.trim() || words.sheet.untitled;
  const { thickness } = job.part;
  const angle = projection ?? job.drawing.projection;
  const cells: Cell[] = [
    { label: "", value: `${title} · ${kinds[kind]}`, height: 5, large: 1, wide: true },
    { label: field.name, value: school.name || blank(26), most: 3 }, { label: field.className, value: school.className || blank(8), most: 1 },
    { label: field.date, value: school.date || blank(10), most: 1 },
    ...(MARKED.includes(kind) ? [{ label: field.marks, value: school.marksMax === null ? blank(8) : marksOf(String(school.marksMax)) }] : []),
    ...(scale === null ? [] : [{ label: field.scale, value: scaleText(scale) }]),
    { label: field.stations, value: String(stations) },
    ...(school.school.trim() === "" ? [] : [{ label: field.school, value: school.school.trim(), most: 4 }]),
    { label: field.seam, value: seamText(job, figures, words) },
    ...(thickness > 0 ? [{ label: field.sheetMetal, value: words.lesson.thick(figures.length(thickness)) }] : []),
    ...(code === "" ? [] : [{ label: field.code, value: code }]),
    ...(scale === null || kind === "card" ? [] : [{ label: "", value: "", drawn: { width: 24, height: 9, items: (middle: { x: number; y: number }) => projectionSymbol(angle, { x: middle.x - 4.5, y: middle.y }, 0.55) } }]),
  ];
  return titleBlock(cells.map((cell) => ({ ...cell, labelHeight: LETTERING })), width);
}
