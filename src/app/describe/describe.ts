import type { Cut, Job } from "../../core/index";
import { TRADE, type TradeWords } from "../../drawing/tradeWords";
import { clauseWords, type PlaceWords } from "../words/clauses";
import { bodyTokens, sheetTokens } from "./body";
import { openingTokens } from "./opening";
import { planeTokens } from "./plane";
import { shapedTokens } from "./shaped";
import { seamTokens, stationsTokens } from "./stations";
import type { Clause, ClauseKind, Token } from "./token";

const none: ReadonlySet<string> = new Set();

/**
 * The job as sentences, one clause a part of the job, in the order they are read.
 * `spelled`: keys of the directions to be given in figures though they have a name. `trade`: in whose words.
 */
export function describe(job: Job, spelled: ReadonlySet<string> = none, trade: TradeWords = TRADE["stretch-out"]): Clause[] {
  const place = clauseWords.places[job.part.attitude];
  const { names } = clauseWords;
  return [
    { id: "part", part: "body", kind: "body", name: names.body, on: true, field: "part", tokens: bodyTokens(job, place) },
    ...job.part.cuts.map((cut, index): Clause => ({
      id: `cut:${cut.id}`,
      part: "cut",
      kind: cutKind(cut),
      name: cutName(cut),
      on: cut.on,
      field: `part.cuts.${index}`,
      tokens: cutTokens(cut, index, place, spelled),
    })),
    { id: "sheet", part: "sheet", kind: "sheet", name: names.sheet, on: true, field: "part.thickness", tokens: sheetTokens(job) },
    { id: "seam", part: "seam", kind: "seam", name: names.seam, on: true, field: "development.seam", tokens: seamTokens(job, place, trade) },
    { id: "stations", part: "stations", kind: "stations", name: names.stations, on: true, field: "development.stations", tokens: stationsTokens(job) },
  ];
}

/** The kind of this cut in a word or two. */
export function cutName(cut: Cut): string {
  return clauseWords.names[cutKind(cut)];
}

function cutKind(cut: Cut): Exclude<ClauseKind, "shop"> {
  if (cut.kind === "plane") return "plane";
  return cut.kind === "shaped" ? cut.profile.shape : cut.outline.shape;
}

function cutTokens(cut: Cut, index: number, place: PlaceWords, spelled: ReadonlySet<string>): Token[] {
  switch (cut.kind) {
    case "plane":
      return planeTokens(cut, index, place, spelled);
    case "shaped":
      return shapedTokens(cut, index, place, spelled);
    case "opening":
      return openingTokens(cut, index, place, spelled);
  }
}
