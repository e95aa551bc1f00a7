import type { Job } from "../../core/index";
import type { Quantity } from "../quantity/format";
import type { clauseWords } from "../words/clauses";

// What a clause is made of: text to read, and numbers and choices edited where they stand.

export interface TextToken {
  readonly kind: "text";
  readonly text: string;
  /** What stands here in plain text instead, where a number that is nothing goes unsaid. */
  readonly plain?: string;
}

export interface NumberToken {
  readonly kind: "number";
  /** Names the field for good, also when clauses change places. */
  readonly key: string;
  /** The field's path in the job file, as problems name it. */
  readonly field: string;
  readonly quantity: Quantity;
  readonly label: string;
  readonly value: number;
  /** In plain text it goes unsaid, and the words around it with it. */
  readonly unsaid?: true;
  /** The job with this number in it; the job itself when its place is gone. */
  readonly put: (job: Job, value: number) => Job;
}

export interface ChoiceToken {
  readonly kind: "choice";
  readonly key: string;
  readonly field: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly Option[];
  readonly put: (job: Job, value: string) => Job;
  /** The option after which the number is to be shown beside the choice, though a name would do. */
  readonly spells?: string;
}

export interface Option {
  readonly value: string;
  readonly label: string;
}

/** Begins a new line within a clause. */
export interface BreakToken {
  readonly kind: "break";
}

export type Token = TextToken | NumberToken | ChoiceToken | BreakToken;

export type ClausePart = "body" | "cut" | "sheet" | "seam" | "stations" | "shop";

/** What a clause is about. */
export type ClauseKind = keyof typeof clauseWords.names | "shop";

export interface Clause {
  /** "part" for the body, "sheet", "seam", "stations", "cut:" and the id of the cut, or "shop:" and the field of what the shop adds. */
  readonly id: string;
  readonly part: ClausePart;
  readonly kind: ClauseKind;
  readonly name: string;
  readonly on: boolean;
  /** The path in the job file of the part described. */
  readonly field: string;
  readonly tokens: readonly Token[];
}

export function text(words: string, plain?: string): TextToken {
  return plain === undefined ? { kind: "text", text: words } : { kind: "text", text: words, plain };
}

/** "[5] right of the axis", in plain text "on the axis" for [0]. */
export function rightOfAxis(number: NumberToken): Token[] {
  return number.value === 0 ? [unsaid(number), text(" right of the axis", "on the axis")] : [number, text(" right of the axis")];
}

export function unsaid(number: NumberToken): NumberToken {
  return { ...number, unsaid: true };
}

export function optionsOf<K extends string>(table: Readonly<Record<K, string>>): Option[] {
  return Object.entries<string>(table).map(([value, label]) => ({ value, label }));
}
