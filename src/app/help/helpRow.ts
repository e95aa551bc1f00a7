import type { Miniature } from "../../drawing/miniature/miniature";
import type { Mark } from "../../drawing/miniature/miniatureMarks";
import type { TradeWords } from "../../drawing/tradeWords";
import type { SampleName } from "./samples";

// What is said and shown about one field: a sentence or two, and a small piece with what is meant marked on it.

export interface HelpRow {
  readonly says: string | ((trade: TradeWords) => string);
  readonly sample: SampleName;
  readonly view: Miniature["view"];
  readonly marks: readonly Mark[];
}

/** Rows by the name of the field (`helpName`). */
export type HelpTable = Readonly<Record<string, HelpRow>>;

const at = (x: number, y: number) => ({ x, y });

/** A dimension from (x1, y1) to (x2, y2), its line `beside` them to the left of the way there. */
export const size = (x1: number, y1: number, x2: number, y2: number, beside = 0): Mark => ({ kind: "size", from: at(x1, y1), to: at(x2, y2), beside });
/** An angle about (x, y) from one direction to another, degrees anticlockwise from the right. */
export const angle = (x: number, y: number, radius: number, from: number, to: number): Mark => ({ kind: "angle", centre: at(x, y), radius, from, to });
export const bothWays = (x: number, y: number, radius: number, from: number, to: number): Mark => ({ kind: "angle", centre: at(x, y), radius, from, to, both: true });
export const arrow = (x1: number, y1: number, x2: number, y2: number): Mark => ({ kind: "arrow", from: at(x1, y1), to: at(x2, y2) });
export const line = (x1: number, y1: number, x2: number, y2: number): Mark => ({ kind: "line", from: at(x1, y1), to: at(x2, y2) });
export const thin = (x1: number, y1: number, x2: number, y2: number): Mark => ({ kind: "thin", from: at(x1, y1), to: at(x2, y2) });
export const place = (x: number, y: number): Mark => ({ kind: "place", at: at(x, y) });
export const circle = (radius: number): Mark => ({ kind: "circle", centre: at(0, 0), radius });
export const thinCircle = (x: number, y: number, radius: number): Mark => ({ kind: "circle", centre: at(x, y), radius, thin: true });
