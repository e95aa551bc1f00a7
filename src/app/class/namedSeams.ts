import type { Job, Seam } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { seamTokens } from "../describe/stations";
import { clauseWords } from "../words/clauses";

export interface NamedSeamChoice {
  readonly seam: Seam;
  readonly name: string;
}

/** The seams a class may be given, by their names in the description; that of the job too when it stands at an angle. */
export function namedSeams(job: Job, trade: TradeWords, angle: (degrees: number) => string): NamedSeamChoice[] {
  const choice = seamTokens(job, clauseWords.places[job.part.attitude], trade).find((token) => token.kind === "choice");
  const named = choice?.kind === "choice" ? choice.options.filter(({ value }) => value !== "angle") : [];
  const { seam } = job.development;
  return [
    ...named.map(({ value, label }) => ({ seam: { at: value } as Seam, name: label })),
    ...(seam.at === "angle" ? [{ seam, name: angle(seam.angle) }] : []),
  ];
}

/** The name of one of them. */
export function seamName(seam: Seam, job: Job, trade: TradeWords, angle: (degrees: number) => string): string {
  const all = namedSeams({ ...job, development: { ...job.development, seam } }, trade, angle);
  return all.find((one) => JSON.stringify(one.seam) === JSON.stringify(seam))?.name ?? seam.at;
}
