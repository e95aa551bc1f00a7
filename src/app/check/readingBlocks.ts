import type { ReadingPlace } from "../../core/index";
import { TRADE, type TradeWords } from "../../drawing/tradeWords";
import { checkWords } from "../words/check";
import type { Check } from "./useCheck";

/** Rows of the table that have the same fields. */
export interface ReadingBlock {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    /** What a pasted column may call it, in small letters. */
    readonly names: readonly string[];
    readonly cells: readonly ReadingPlace[];
    readonly station: number | null;
  }[];
}

const girths = Object.values<TradeWords>(TRADE).map(({ girth }) => girth);

/** The last line is the first again, or goes by the count of spaces. */
function stationNames(label: string, at: number): string[] {
  return label === "0" && at > 0 ? [label, `${label} again`, String(at)] : [label.toLowerCase()];
}

/** The rows of the table of readings: the sizes, the ends, the opening. */
export function readingBlocks({ places, job }: Check, trade: TradeWords): ReadingBlock[] {
  const { angles } = places;
  const cutNumber = (cut: string) => job.part.cuts.findIndex(({ id }) => id === cut) + 1;
  const sizes: ReadingBlock = { title: checkWords.place, heads: [checkWords.read], rows: [
    { name: checkWords.stretchOut(trade), names: girths, cells: [{ line: "stretchOut" }], station: null },
    { name: checkWords.spacing, names: [checkWords.spacing.toLowerCase()], cells: [{ line: "spacing" }], station: null },
    ...angles.map((cut) => {
      const name = checkWords.angleOf(cutNumber(cut), angles.length > 1);
      return { name, names: [name.toLowerCase()], cells: [{ line: "angle" as const, cut }], station: null };
    }),
  ] };
  return [sizes, ...places.blocks.map(({ lines, rows }) => ({
    title: lines[0] === "lower" ? checkWords.opening : "", heads: lines.map((line) => checkWords.heads[line]),
    rows: rows.map(({ label, at, station }) => ({ name: checkWords.station(label, label === "0" && at > 0), names: stationNames(label, at), cells: lines.map((line) => ({ line, at })), station })),
  }))];
}
