import { CHOICES, type DrawnScale, type Job, type ReadingSheet } from "../../core/index";

// What stands in the fields of a check, as typed: the texts are the truth, so that nothing typed is ever lost.

export interface Sheet extends Pick<ReadingSheet, "scale" | "count" | "start" | "along"> {
  /** What was read, by the key of its place. */
  readonly readings: Readonly<Record<string, string>>;
  /** What the teacher's eye gives, by the id of the item of the scheme. */
  readonly marks: Readonly<Record<string, string>>;
}

export const emptySheet: Sheet = { scale: null, count: "", start: "", along: CHOICES.along.default, readings: {}, marks: {} };

/** The scale of the drawing: as said, else that of the sheets made of the job. */
export function scaleOf({ scale }: Sheet, { drawing }: Job): DrawnScale {
  return scale ?? drawing.sheetScale ?? CHOICES.drawnScale.default;
}

/** mm on the paper for one mm. */
export function scaleFactor(scale: DrawnScale): number {
  const [paper = 1, real = 1] = scale.split(":").map(Number);
  return paper / real;
}

/** Whether anything was read or given. */
export function isEmpty({ readings, marks }: Sheet): boolean {
  return [...Object.values(readings), ...Object.values(marks)].every((text) => text.trim() === "");
}

/** The sheet as a job file keeps it. */
export function savedSheet({ readings, marks, ...drawing }: Sheet): ReadingSheet {
  const list = (texts: Readonly<Record<string, string>>) => Object.entries(texts).flatMap(([at, text]) => (text.trim() === "" ? [] : [{ at, text }]));
  return { ...drawing, values: list(readings), marks: list(marks) };
}

/** The sheet of a job file. */
export function openedSheet({ values, marks, ...drawing }: ReadingSheet): Sheet {
  const table = (list: ReadingSheet["values"]) => Object.fromEntries(list.map(({ at, text }) => [at, text]));
  return { ...drawing, readings: table(values), marks: table(marks) };
}

/** A sheet from what the browser kept; null for anything else. */
export function keptSheet(data: unknown): Sheet | null {
  if (typeof data !== "object" || data === null) return null;
  const { scale, count, start, along, readings, marks } = data as Partial<Record<keyof Sheet, unknown>>;
  if ((scale !== null && !CHOICES.drawnScale.of.some((one) => one === scale)) || !CHOICES.along.of.some((one) => one === along)) return null;
  if (typeof count !== "string" || typeof start !== "string" || !areTexts(readings) || !areTexts(marks)) return null;
  return { scale: scale as Sheet["scale"], count, start, along: along as Sheet["along"], readings, marks };
}

function areTexts(data: unknown): data is Record<string, string> {
  return typeof data === "object" && data !== null && Object.values(data).every((text) => typeof text === "string");
}
