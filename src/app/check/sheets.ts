import { create } from "zustand";
import type { Job } from "../../core/index";
import { useApp } from "../store/store";
import { type Sheet, emptySheet, keptSheet } from "./sheet";

// The sheets of readings, one for every piece they were read of, kept in the browser beside the work. Another piece begins an empty
// sheet; the one before stays kept and can be brought over.

const place = "flatwright.readings";
/** Sheets kept; the ones not touched longest go first. */
const most = 40;

interface Sheets {
  /** By piece, the one last touched last. */
  readonly all: Readonly<Record<string, Sheet>>;
  /** The piece whose sheet was touched last. */
  readonly last: string | null;
  /** Whether the browser takes them. */
  readonly keeps: boolean;
}

export const useSheets = create<Sheets>()(() => ({ ...keptSheets(), keeps: true }));

/** What a sheet belongs to: the part and its numbering, not its title or how it is shown. */
export function pieceKey({ part, development, fabrication: { purpose, surface, kFactor, paper } }: Job): string {
  return JSON.stringify([part, development, purpose, surface, kFactor, paper]);
}

/** Changes the sheet of the job on the board, and keeps it. */
export function changeSheet(change: (sheet: Sheet) => Sheet): void {
  const key = pieceKey(useApp.getState().development.job);
  const { [key]: now = emptySheet, ...others } = useSheets.getState().all;
  const all = Object.fromEntries([...Object.entries(others).slice(1 - most), [key, change(now)]]);
  useSheets.setState({ all, last: key, keeps: keep(all) });
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
    return { all, last: Object.keys(all).at(-1) ?? null };
  } catch {
    return { all: {}, last: null };
  }
}
