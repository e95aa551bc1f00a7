// What marks does a drawing earn by the teacher's scheme? Items that readings can judge are judged by the share of them within what is
// allowed; what is taken off is taken off for each reading outside it; the rest is for the teacher's eye.

import type { MarkingItem } from "../../job/marking";
import type { Diagnosis } from "./diagnose";
import type { JudgedReading } from "./verdict";

export interface ItemMarks {
  readonly item: MarkingItem;
  /** Marks given (0 to the item's) or taken off (at most 0); null as long as nothing decides them. */
  readonly given: number | null;
  /** Readings that decided, and those of them outside what is allowed; 0 for what the eye or the diagnosis decides. */
  readonly read: number;
  readonly outside: number;
}

export interface Marks {
  readonly items: readonly ItemMarks[];
  /** Of what is decided, never under 0; of how many, undecided items left out; and of how many in all. */
  readonly sum: number;
  readonly of: number;
  readonly full: number;
}

export interface MarksFrame {
  readonly judged: readonly JudgedReading[];
  /** null as long as it is not known. */
  readonly diagnosis: Diagnosis | null;
  /** What the teacher's eye gives an item (or how many faults it finds, where marks are taken off); null: not looked at. It overrules readings. */
  readonly eye: (item: MarkingItem) => number | null;
}

/** The marks of a scheme; what the readings give is rounded down to half marks, so that the full mark is for everything only. */
export function marks(items: readonly MarkingItem[], frame: MarksFrame): Marks {
  const all = items.map((item) => itemMarks(item, frame));
  const decided = all.filter(({ given }) => given !== null);
  const full = (some: readonly ItemMarks[]) => some.reduce((sum, { item }) => sum + Math.max(0, item.marks), 0);
  return { items: all, sum: Math.max(0, decided.reduce((sum, { given }) => sum + (given ?? 0), 0)), of: full(decided), full: full(all) };
}

function itemMarks(item: MarkingItem, { judged, diagnosis, eye }: MarksFrame): ItemMarks {
  const seen = eye(item);
  const own = item.by === "eye" || item.by === "seam" ? [] : judged.filter((one) => kindOf(one) === item.by);
  const outside = own.filter(({ within }) => !within).length;
  const at = { item, read: own.length, outside };
  if (seen !== null) return { ...at, given: byEye(item.marks, seen) };
  if (item.by === "seam") return { ...at, given: bySeam(item.marks, diagnosis) };
  if (own.length === 0) return { ...at, given: null };
  return { ...at, given: item.marks < 0 ? item.marks * outside : halves((item.marks * (own.length - outside)) / own.length) };
}

function byEye(full: number, seen: number): number {
  return full < 0 ? full * Math.max(0, seen) : Math.min(full, Math.max(0, seen));
}

/** Whether the seam stands where it should; nothing is decided by readings that are not explained. */
function bySeam(full: number, diagnosis: Diagnosis | null): number | null {
  if (diagnosis?.kind !== "right" && diagnosis?.kind !== "explained") return null;
  if (diagnosis.unseen.some(({ kind }) => kind === "seam")) return null;
  const wrong = diagnosis.kind === "explained" && diagnosis.explanation.mistakes.some(({ kind }) => kind === "seam");
  return full < 0 ? (wrong ? full : 0) : wrong ? 0 : full;
}

function halves(value: number): number {
  return Math.floor(2 * value + 1e-9) / 2;
}

function kindOf({ reading: { line } }: JudgedReading): MarkingItem["by"] {
  return line === "angle" ? "angles" : line === "stretchOut" || line === "spacing" ? "girth" : "ordinates";
}
