import { create } from "zustand";
import type { LessonSheets } from "../../../drawing/lesson/lessonSheets";
import { LESSON_KINDS, type LessonKind } from "../../../drawing/lesson/lessonKinds";
import { PAPER_NAMES, type PaperName } from "../../../drawing/sheets/papers";
import type { PageSetup } from "../../../drawing/sheets/setup";
import { isAmerican } from "../../output/isAmerican";

// What a teacher wants on the sheets for a class, kept on this device.

export interface SheetChoices {
  /** What is made, in the order of the list of kinds. */
  readonly kinds: readonly LessonKind[];
  readonly paper: PaperName;
  readonly orientation: PageSetup["orientation"];
  /** Paper mm a real mm; null: the largest usual one that fits. */
  readonly scale: number | null;
  /** Null: that of the job. */
  readonly angle: "first" | "third" | null;
  readonly school: string;
  readonly className: string;
  readonly date: string;
  /** Whether the description of the piece is printed. */
  readonly described: boolean;
  /** What is to be done; null: the usual words. */
  readonly task: string | null;
  readonly other: boolean;
  readonly found: boolean;
  readonly started: LessonSheets["started"];
  readonly stepsPerPage: LessonSheets["stepsPerPage"];
}

const place = "flatwright.sheets";

/** Longest text that is kept, letters. */
const longest = 2000;

const kinds: { readonly [K in keyof SheetChoices]: (value: unknown) => boolean } = {
  kinds: (value) => Array.isArray(value) && value.every(oneOf(LESSON_KINDS)),
  paper: oneOf(PAPER_NAMES),
  orientation: oneOf(["best", "portrait", "landscape"]),
  scale: (value) => value === null || (typeof value === "number" && value > 0 && Number.isFinite(value)),
  angle: oneOf(["first", "third", null]),
  school: isText,
  className: isText,
  date: isText,
  described: (value) => typeof value === "boolean",
  task: (value) => value === null || isText(value),
  other: (value) => typeof value === "boolean",
  found: (value) => typeof value === "boolean",
  started: oneOf(["line", "divided", "numbered"]),
  stepsPerPage: oneOf([2, 4, 6]),
};

export const initialChoices: SheetChoices = {
  kinds: ["question", "key"], paper: isAmerican() ? "Tabloid" : "A3", orientation: "best", scale: null, angle: null, school: "", className: "", date: "",
  described: true, task: null, other: false, found: false, started: "numbered", stepsPerPage: 4,
};

export const useSheets = create<SheetChoices>()(() => ({ ...initialChoices, ...kept() }));

/** Changes some of the choices and keeps them when the browser can. */
export function chooseSheets(change: Partial<SheetChoices>): void {
  useSheets.setState(change);
  try {
    localStorage.setItem(place, JSON.stringify(useSheets.getState()));
  } catch {
    // Without storage the choices last as long as the page.
  }
}

function kept(): Partial<SheetChoices> {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(place) ?? "{}");
    if (typeof read !== "object" || read === null) return {};
    return Object.fromEntries(Object.entries(read).filter(([name, value]) => name in kinds && kinds[name as keyof SheetChoices](value)));
  } catch {
    return {};
  }
}

function oneOf(values: readonly unknown[]) {
  return (value: unknown) => values.includes(value);
}

function isText(value: unknown): boolean {
  return typeof value === "string" && value.length <= longest;
}
