import { create } from "zustand";
import { exerciseOf, readJobText, variantOfCode, writeJobText, type Job } from "../../../core/index";
import { useApp } from "../../store/store";
import { holdStudent, pieceKey, useSheets } from "../sheets";

// The marking list of a class: who is in it and with which piece, kept on this device. What was read of each drawing is kept with the
// other sheets, by the student.

export interface ListRow {
  readonly id: string;
  readonly name: string;
  /** Of their own piece; empty: the exercise as it stands. */
  readonly code: string;
}

export interface MarkingList {
  /** The job the list was begun with; its scheme holds for the whole class. Null as long as there is no list. */
  readonly exercise: Job | null;
  readonly rows: readonly ListRow[];
  /** Whether the browser keeps it. */
  readonly keeps: boolean;
}

const place = "flatwright.marking";

/** More students than this are another school's. */
export const MOST_STUDENTS = 1000;

export const useMarkingList = create<MarkingList>()(() => ({ ...kept(), keeps: true }));

/** Puts rows into the list, which begins with the job on the board when there is none, or when the codes are of that job. */
export function putRows(rows: readonly ListRow[], onBoard: Job): void {
  const { exercise } = useMarkingList.getState();
  keep({ exercise: exercise && !isOfCodes(onBoard, exercise, rows) ? exercise : onBoard, rows });
}

/** Whether the codes are of the job on the board and none is of the exercise. */
function isOfCodes(onBoard: Job, exercise: Job, rows: readonly ListRow[]): boolean {
  const codes = rows.map(({ code }) => code).filter((code) => code !== "");
  const knows = (job: Job) => codes.some((code) => variantOfCode(exerciseOf(job), code).ok);
  return codes.length > 0 && !knows(exercise) && knows(onBoard);
}

/** Takes the scale a student's sheet was made at for that of the class; a piece that knows none leaves it. */
export function takeScale({ drawing: { sheetScale } }: Job): void {
  const { exercise, rows } = useMarkingList.getState();
  if (exercise && sheetScale !== null && sheetScale !== exercise.drawing.sheetScale) keep({ exercise: { ...exercise, drawing: { ...exercise.drawing, sheetScale } }, rows });
}

/** Takes a student out; what was read of their drawing stays kept. */
export function removeRow(id: string): void {
  const { exercise, rows } = useMarkingList.getState();
  keep({ exercise, rows: rows.filter((row) => row.id !== id) });
}

/** Ends the list. */
export function endList(): void {
  holdStudent(null);
  keep({ exercise: null, rows: [] });
}

/** An id no row has. */
export function freshId(): string {
  return crypto.randomUUID();
}

function keep(list: Pick<MarkingList, "exercise" | "rows">): void {
  let keeps = true;
  try {
    localStorage.setItem(place, JSON.stringify({ exercise: list.exercise && writeJobText(list.exercise), rows: list.rows }));
  } catch {
    keeps = false;
  }
  useMarkingList.setState({ ...list, keeps });
}

function kept(): Pick<MarkingList, "exercise" | "rows"> {
  const none = { exercise: null, rows: [] };
  try {
    const { exercise, rows } = JSON.parse(localStorage.getItem(place) ?? "{}") as Partial<Record<string, unknown>>;
    const read = typeof exercise === "string" ? readJobText(exercise) : null;
    return read?.ok && Array.isArray(rows) ? { exercise: read.job, rows: rows.filter(isRow).slice(0, MOST_STUDENTS) } : none;
  } catch {
    return none;
  }
}

function isRow(data: unknown): data is ListRow {
  if (typeof data !== "object" || data === null) return false;
  const { id, name, code } = data as Record<string, unknown>;
  return [id, name, code].every((text) => typeof text === "string");
}

// A scheme changed, or sheets made at another scale, while the exercise or a student's piece is on the board: that is so for the whole class.
useApp.subscribe(({ development: { job }, message }, { development: { job: former } }) => {
  const { student } = useSheets.getState();
  const { exercise, rows } = useMarkingList.getState();
  if (job === former || !exercise || (job.marking === former.marking && job.drawing.sheetScale === former.drawing.sheetScale)) return;
  const key = pieceKey(job);
  if (key !== pieceKey(former) || (student?.piece !== key && !isSameExercise(job, exercise))) return;
  // A job that was opened brings its scale, but its scheme is no change of the one here.
  const opened = message?.kind === "set-aside" && message.job === former;
  if (opened) takeScale(job);
  else keep({ exercise: { ...exercise, marking: job.marking, drawing: job.drawing }, rows });
});

function isSameExercise(one: Job, other: Job): boolean {
  return pieceKey(one) === pieceKey(other) && JSON.stringify(one.exercise) === JSON.stringify(other.exercise);
}

// A list whose codes are of another exercise takes that exercise when it comes to the board.
useApp.subscribe(({ development: { job } }, before) => {
  const { exercise, rows } = useMarkingList.getState();
  if (job.exercise === before.development.job.exercise || !exercise || !isOfCodes(job, exercise, rows)) return;
  keep({ exercise: job, rows });
});
