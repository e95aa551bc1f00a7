import { create } from "zustand";
import type { ReadLine } from "../../core/index";
import type { ReadPlaces, ReadRow } from "../check/places";

// Reading off the picture on the board: which edge, how, whose turn it is, and what has been taken.

export interface Taken {
  readonly key: string;
  readonly before: string;
  readonly after: string;
}

/** What happened last: taken, found typed already, taken back, traced. */
export type Said =
  | { readonly kind: "taken" | "typed"; readonly label: string; readonly text: string; readonly typed: string; readonly key: string }
  | { readonly kind: "traced"; readonly count: number; readonly kept: number }
  | { readonly kind: "back"; readonly label: string };

interface ReadingOff {
  readonly line: ReadLine | null;
  readonly way: "press" | "trace";
  /** What becomes of fields that hold something typed. */
  readonly typed: "kept" | "replaced";
  /** Index of the row whose turn it is; as many as there are rows: all have had theirs. */
  readonly turn: number;
  /** Where the last press was: mm along the paper, and its place in the numbering. */
  readonly pressed: { readonly x: number; readonly at: number } | null;
  /** mm on the paper at which the cross of the keys stands; null: half way up. */
  readonly level: number | null;
  /** Steps that can be taken back, each of one or more fields. */
  readonly taken: readonly (readonly Taken[])[];
  readonly said: Said | null;
}

export const readingAfresh: ReadingOff = { line: null, way: "press", typed: "kept", turn: 0, pressed: null, level: null, taken: [], said: null };

export const useReadingOff = create<ReadingOff>()(() => readingAfresh);

/** The lines that can be read off, as they are tabled. */
export function linesOf({ blocks }: ReadPlaces): ReadLine[] {
  return blocks.flatMap(({ lines }) => lines);
}

/** The line that is read, and its rows. */
export function rowsRead(places: ReadPlaces, line: ReadLine | null): { readonly line: ReadLine; readonly rows: readonly ReadRow[] } {
  const block = places.blocks.find(({ lines }) => line !== null && lines.includes(line));
  if (block && line !== null) return { line, rows: block.rows };
  // The end that is cut is tabled last.
  const [first] = places.blocks;
  return { line: first?.lines.at(-1) ?? "top", rows: first?.rows ?? [] };
}

/** Goes to a row, or beyond the last. */
export function goToRow(turn: number, rows: readonly ReadRow[]): void {
  useReadingOff.setState({ turn: Math.min(rows.length, Math.max(0, turn)) });
}
