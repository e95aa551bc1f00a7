// The words of school sheets. The caller may pass its own.

import { type SheetWords, sheetWords } from "../sheets/sheetWords";
import { type StepWords, stepWords } from "../steps/stepWords";
import { TRADE, type TradeWords, capital } from "../tradeWords";
import type { LessonKind } from "./lessonKinds";

export interface LessonWords {
  readonly kinds: Readonly<Record<LessonKind, string>>;
  readonly field: Readonly<Record<"school" | "name" | "className" | "date" | "marks" | "scale" | "seam" | "stations" | "code" | "sheetMetal", string>>;
  /** Where the seam of a lying pipe is: what is its left side upright looks up. */
  readonly lyingSeam: Readonly<Record<"left" | "right", string>>;
  readonly marksOf: (most: string) => string;
  readonly checkRuler: (length: number) => string;
  /** Where the development is to be drawn. */
  readonly room: string;
  /** Of a cut no view shows as a line. */
  readonly fromSquare: (angle: string) => string;
  readonly included: (angle: string) => string;
  /** Of the sheet the piece is made of. */
  readonly thick: (figure: string) => string;
  /** Before the figure of the stretch-out on a key. */
  readonly timesPi: (diameter: string) => string;
  readonly stretchOut: Readonly<Record<"head" | "true" | "stepped" | "short", string>>;
  /** Heads of the station table that the shop's has not. */
  readonly ordinate: string;
  readonly opening: string;
  /** On a card model: its scale, how it is put together, on its laps. */
  readonly card: { readonly heading: (scale: string) => string; readonly make: (discs: boolean) => string; readonly glue: string };
  readonly marking: Readonly<Record<"item" | "expected" | "marks" | "given" | "total", string>>;
  /** Of ordinates: the least and the greatest. */
  readonly between: (least: string, most: string) => string;
  /** Marks taken off for each fault. */
  readonly off: (marks: string) => string;
  /** Of two figures that both are right. */
  readonly either: (one: string, other: string) => string;
  /** How the stretch-out is to be found, by the teacher's rule. */
  readonly girthRule: Readonly<Record<"exact" | "stepped" | "either", string>>;
  readonly tolerance: (length: string, angle: string) => string;
  /** Of ordinates a key does not figure at their elements; null: of all. */
  readonly inTable: (stations: string | null) => string;
  readonly chords: (count: number, chord: string, total: string, short: string) => string;
}

export function lessonWords({ girth, short }: Pick<TradeWords, "girth" | "short">): LessonWords {
  return {
    kinds: {
      question: "Question", started: "Question, begun", key: "Key", stationTable: "Station table", steps: "Construction", card: "Card model",
    },
    field: {
      school: "School", name: "Name", className: "Class", date: "Date", marks: "Marks", scale: "Scale", seam: "Seam",
      stations: "Stations", code: "Code", sheetMetal: "Sheet metal",
    },
    lyingSeam: { left: "at the top", right: "at the bottom" },
    marksOf: (most) => `___ of ${most}`,
    checkRuler: (length) => `Check the ${length} mm ruler. Print at 100 %, never fitted.`,
    room: capital(short.pattern),
    fromSquare: (angle) => `${angle} from square`,
    included: (angle) => `${angle} included`,
    thick: (figure) => `${figure} thick`,
    timesPi: (diameter) => `${girth} π × ${diameter} =`,
    stretchOut: { head: capital(girth), true: "true length", stepped: "stepped with the dividers", short: "short by" },
    ordinate: "Ordinate",
    opening: "Opening",
    card: {
      heading: (scale) => `Card model, ${scale} of the piece.`,
      make: (discs) => `Cut along the wide lines, slits too; roll up and glue the seam on its lap${discs ? "; fold the laps of the ends and glue the discs on them" : ""}.`,
      glue: "glue",
    },
    marking: { item: "What is marked", expected: "Expected", marks: "Marks", given: "Given", total: "Together" },
    between: (least, most) => `${least} to ${most}`,
    off: (marks) => `−${marks} each`,
    either: (one, other) => `${one} or ${other}`,
    girthRule: {
      exact: `${capital(girth)} found as π × diameter.`,
      stepped: `${capital(girth)} stepped off with chords.`,
      either: `${capital(girth)} found as π × diameter or stepped off with chords.`,
    },
    tolerance: (length, angle) => `Right within ±${length} on the paper and ±${angle}.`,
    inTable: (stations) => (stations === null ? "The ordinates are in the station table." : `Ordinates without a figure here, of stations ${stations}, are in the station table.`),
    chords: (count, chord, total, less) => `${count} chords of ${chord} = ${total}, ${less} short`,
  };
}

/** All words a school sheet needs. */
export interface AllLessonWords {
  readonly sheet: SheetWords;
  readonly step: StepWords;
  readonly lesson: LessonWords;
}

/** In the words of the trade. */
export function allLessonWords(trade: TradeWords): AllLessonWords {
  return { sheet: sheetWords(trade), step: stepWords(trade), lesson: lessonWords(trade) };
}

export const ENGLISH_LESSON: AllLessonWords = allLessonWords(TRADE["stretch-out"]);
