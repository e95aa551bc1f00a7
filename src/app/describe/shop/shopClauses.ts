import type { End, FabricationChoices, Job } from "../../../core/index";
import { clauseWords } from "../../words/clauses";
import { shopWords } from "../../words/shop";
import type { Clause, Token } from "../token";
import { countTokens } from "./count";
import { edgeTokens } from "./edge";
import { gaugeTokens } from "./gauge";
import { jointTokens } from "./joint";
import { plateTokens } from "./plate";
import { purposeTokens } from "./purpose";
import { shopKey } from "./shopField";
import { densityTokens, neutralTokens, surfaceTokens } from "./wall";

/** The clauses for the shop, each by the field that keeps it in sight when it says nothing of note. */
export type ShopClause = "purpose" | "gauge" | "kFactor" | "surface" | "seam" | `edges.${End}` | `plates.${End}` | "density" | "quantity";

const ends = ["top", "bottom"] as const;

/** What the shop adds to the description: a clause for each thing that is not as usual, or was asked for by its key in `spelled`. */
export function shopClauses(job: Job, spelled: ReadonlySet<string>): Clause[] {
  const { fabrication } = job;
  const place = clauseWords.places[job.part.attitude];
  const { names } = shopWords;
  const wrap = fabrication.purpose === "wrap";
  const clause = (id: ShopClause, name: string, shown: boolean, tokens: () => Token[]): Clause[] =>
    shown || keysOf(id).some((key) => spelled.has(key)) ? [{ id: clauseId(id), part: "shop", kind: "shop", name, on: true, field: shopKey(id), tokens: tokens() }] : [];
  return [
    ...clause("purpose", names.purpose, wrap, () => purposeTokens(job)),
    ...clause("gauge", names.gauge, fabrication.gauge !== null, () => gaugeTokens(job)),
    ...(wrap ? [] : clause("kFactor", names.neutral, fabrication.kFactor !== 0.5, () => neutralTokens(job))),
    ...(wrap ? [] : clause("surface", names.surface, fabrication.surface !== "mean", () => surfaceTokens(job))),
    ...clause("seam", names.joint, isJoined(fabrication), () => jointTokens(job, spelled)),
    ...ends.flatMap((end) => clause(`edges.${end}`, names.edge[end], fabrication.edges[end].kind !== "none", () => edgeTokens(job, end, place))),
    ...ends.flatMap((end) => clause(`plates.${end}`, names.plate[end], fabrication.plates[end] !== null, () => plateTokens(job, end, place))),
    ...clause("density", names.density, fabrication.density !== null, () => densityTokens(job)),
    ...clause("quantity", names.count, fabrication.quantity !== 1 || fabrication.hand !== "described", () => countTokens(job)),
  ];
}

/** The name of a clause on the page. */
export function clauseId(id: ShopClause): string {
  return `shop:${id}`;
}

/** The keys that keep a clause in sight: its own and that of its choice. */
export function keysOf(id: ShopClause): string[] {
  return id === "quantity" ? [shopKey(id), shopKey("hand")] : [shopKey(id), shopKey(`${id}.kind`)];
}

function isJoined({ seam }: FabricationChoices): boolean {
  return seam.kind !== "butt" || seam.gap > 0;
}
