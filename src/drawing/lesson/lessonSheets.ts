// What is asked for: one kind of school sheet of one job.

import type { Development } from "../../core/index";
import { type Figures, METRIC } from "../figures";
import type { PageSetup } from "../sheets/setup";
import type { Way } from "../steps/way";
import type { LessonKind } from "./lessonKinds";
import { type AllLessonWords, ENGLISH_LESSON } from "./lessonWords";

/** What the school writes in the title block; "" leaves a field to be filled in by hand. */
export interface SchoolBlock {
  readonly school: string;
  readonly title: string;
  readonly name: string;
  readonly className: string;
  readonly date: string;
  /** Greatest number of marks; null: none are given. */
  readonly marksMax: number | null;
}

/** One line of a marking scheme; `expected` says what is looked for, in figures. Marks below 0 are taken off for each fault. */
export interface MarkItem {
  readonly text: string;
  readonly marks: number;
  readonly expected?: string;
}

export interface LessonSheets {
  /** Its first piece is drawn. */
  readonly development: Development;
  readonly kind: LessonKind;
  readonly setup: PageSetup;
  /** First or third angle; null for that of the job. */
  readonly projection: "first" | "third" | null;
  /** Paper mm a real mm; null for the largest usual one that fits. */
  readonly scale: number | null;
  readonly school: SchoolBlock;
  /** The exercise and what is to be done, in paragraphs. */
  readonly text: readonly string[];
  /** The code of a variant, printed in the title block; "" for none. */
  readonly code: string;
  /** Dark modules of a code to be read by a camera, row by row from the top. */
  readonly qr: readonly (readonly boolean[])[] | null;
  /** For the key. */
  readonly marking: readonly MarkItem[];
  /** mm and degrees within which a drawing is right; for the key. */
  readonly tolerance: { readonly length: number; readonly angle: number } | null;
  readonly way: Way;
  /** The view that is neither the front view nor the circle: drawn always, or only where something is given in it. Cuts found by projection: drawn, or left to the student. */
  readonly views: { readonly other: boolean; readonly found: boolean };
  /** Of a development begun: whether the stretch-out is divided, and numbered too. */
  readonly started: "line" | "divided" | "numbered";
  readonly stepsPerPage: 2 | 4 | 6;
  readonly figures: Figures;
  readonly words: AllLessonWords;
}

/** Everything but the development, the kind and the paper, as it is unless asked for otherwise. */
export const DEFAULT_LESSON: Omit<LessonSheets, "development" | "kind" | "setup"> = {
  projection: null, scale: null, school: { school: "", title: "", name: "", className: "", date: "", marksMax: null }, text: [], code: "", qr: null, marking: [],
  tolerance: null, way: "screen", views: { other: false, found: false }, started: "numbered", stepsPerPage: 4, figures: METRIC, words: ENGLISH_LESSON,
};
