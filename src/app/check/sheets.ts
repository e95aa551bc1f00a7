import { create } from "zustand";
import { defaultJob, writeJobText, type Job } from "../../core/index";
import { useApp } from "../store/store";
import { type Sheet, emptySheet, keptSheet } from "./sheet";

// The sheets of readings, one for every piece they were read of, kept in the browser beside the work. Another piece begins an empty
// sheet; the one before stays kept and can be brought over.

const place = "flatwright.readings";
/** Sheets kept, those of a large class among them; the ones not touched longest go first. */
const most = 1200;

interface Sheets {
  /** By piece or student, the one last touched last. */
  readonly all: Readonly<Record<string, Sheet>>;
  /** The piece whose sheet was touched last. */
  readonly last: string | null;
  /** Whether the browser takes them. */
  readonly keeps: boolean;
  /** The student whose sheet is in hand, while their piece is on the board. */
  readonly student: Student | null;
}

/** Kept for this tab alone: two may mark two students. */
const studentPlace = "flatwright.student";

export interface Student {
  readonly id: string;
  /** The key of their piece. */
  readonly piece: string;
}

export const useSheets = create<Sheets>()(() => ({ ...keptSheets(), keeps: true, student: keptStudent() }));

/** What a sheet belongs to: the part and its numbering, not its title, how it is shown or how it is marked; whatever order its fields were made in. */
export function pieceKey({ part, development, fabrication: { purpose, surface, kFactor, paper } }: Job): string {
  const plain = defaultJob();
  const ofPiece: Job = { ...plain, part, development, fabrication: { ...plain.fabrication, purpose, surface, kFactor, paper } };
  return JSON.stringify(JSON.parse(writeJobText(ofPiece)));
}

/** The key of the sheet in hand: the student's, when their piece is on the board, else the piece's. */
export function sheetKey(job: Job, student: Student | null): string {
  const piece = pieceKey(job);
  return student?.piece === piece ? studentKey(student.id) : piece;
}

export function studentKey(id: string): string {
  return `student ${id}`;
}

function isStudentKey(key: string): boolean {
  return key.startsWith(studentKey(""));
}

/** Changes the sheet in hand, and keeps it. */
export function changeSheet(change: (sheet: Sheet) => Sheet): void {
  putSheet(sheetKey(useApp.getState().development.job, useSheets.getState().student), change);
}

/** Changes the sheet with this key, and keeps it. */
export function putSheet(key: string, change: (sheet: Sheet) => Sheet): void {
  const { [key]: now = emptySheet, ...others } = useSheets.getState().all;
  const all = Object.fromEntries([...Object.entries(others).slice(1 - most), [key, change(now)]]);
  useSheets.setState({ all, keeps: keep(all), ...(isStudentKey(key) ? {} : { last: key }) });
}

/** Puts the readings of the piece last read in the fields of the one on the board. */
export function bringOver(): void {
  const { all, last } = useSheets.getState();
  const sheet = last === null ? undefined : all[last];
  if (sheet) changeSheet(() => sheet);
}

function keep(all: Sheets["all"]): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(all));
    return true;
  } catch {
    return false;
  }
}

function keptSheets(): Pick<Sheets, "all" | "last"> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? "{}");
    if (typeof kept !== "object" || kept === null) return { all: {}, last: null };
    const all = Object.fromEntries(Object.entries(kept).flatMap(([key, data]) => (keptSheet(data) ? [[key, data as Sheet]] : [])));
    return { all, last: Object.keys(all).findLast((key) => !isStudentKey(key)) ?? null };
  } catch {
    return { all: {}, last: null };
  }
}

/** Takes a student's sheet in hand, or none. */
export function holdStudent(student: Student | null): void {
  useSheets.setState({ student });
  try {
    sessionStorage.setItem(studentPlace, JSON.stringify(student));
  } catch {
    // Without storage the student is in hand until the page is left.
  }
}

function keptStudent(): Student | null {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(studentPlace) ?? "null");
    if (typeof kept !== "object" || kept === null) return null;
    const { id, piece } = kept as Partial<Record<string, unknown>>;
    return typeof id === "string" && typeof piece === "string" ? { id, piece } : null;
  } catch {
    return null;
  }
}
