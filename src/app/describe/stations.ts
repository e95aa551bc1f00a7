import type { Job } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { clauseWords, fieldWords, type PlaceWords } from "../words/clauses";
import { angled } from "./direction";
import { optionsOf, text, type Option, type Token } from "./token";

type Development = Job["development"];
type Seam = Development["seam"];

const sideOrder = ["front", "right", "back", "left"] as const;

/** "Seam at the [shortest element]." or "Seam at [an angle] of [30]° from the front." */
export function seamTokens(job: Job, place: PlaceWords, trade: TradeWords): Token[] {
  const named = clauseWords.seam(trade);
  const { seam } = job.development;
  const options: Option[] = [
    { value: "shortest", label: named.shortest },
    { value: "longest", label: named.longest },
    ...sideOrder.map((value, i) => ({ value, label: place.sides[i] ?? value })),
    { value: angled, label: named.angle },
  ];
  const choice: Token = {
    kind: "choice",
    key: "seam.at",
    field: "development.seam.at",
    label: fieldWords.seam,
    value: seam.at,
    options,
    put: inDevelopment((d, at: string) => ({ ...d, seam: seamAt(at, d.seam) })),
  };
  if (seam.at !== "angle") return [text("Seam at the "), choice, text(".")];
  return [
    text("Seam at "),
    choice,
    text(" of "),
    {
      kind: "number",
      key: "seam.angle",
      field: "development.seam.angle",
      quantity: "angle",
      label: fieldWords.seamAngle,
      value: seam.angle,
      put: inDevelopment((d, angle: number) => ({ ...d, seam: { at: "angle", angle } })),
    },
    text(" from the front."),
  ];
}

function seamAt(at: string, old: Seam): Seam {
  if (at !== "angle") return { at: at as Exclude<Seam["at"], "angle"> };
  const side = sideOrder.findIndex((name) => name === old.at);
  return { at: "angle", angle: Math.max(0, side) * 90 };
}

/** "[16] stations [evenly spaced], one more at [30]°." */
export function stationsTokens(job: Job): Token[] {
  const { stations, critical, extra } = job.development;
  return [
    { kind: "number", key: "stations", field: "development.stations", quantity: "count", label: fieldWords.stations, value: stations, put: inDevelopment((d, count: number) => ({ ...d, stations: count })) },
    text(" stations "),
    {
      kind: "choice",
      key: "critical",
      field: "development.critical",
      label: fieldWords.critical,
      value: critical ? "yes" : "no",
      options: optionsOf(clauseWords.critical),
      put: inDevelopment((d, value: string) => ({ ...d, critical: value === "yes" })),
    },
    ...extra.flatMap((angle, i): Token[] => [
      text(i === 0 ? ", one more at " : " and "),
      {
        kind: "number",
        key: `extra.${i}`,
        field: `development.extra.${i}`,
        quantity: "angle",
        label: fieldWords.extra(i + 1),
        value: angle,
        put: inDevelopment((d, value: number) => ({ ...d, extra: d.extra.map((old, n) => (n === i ? value : old)) })),
      },
    ]),
    text(extra.length ? " from the front." : "."),
  ];
}

function inDevelopment<V>(change: (development: Development, value: V) => Development) {
  return (job: Job, value: V): Job => ({ ...job, development: change(job.development, value) });
}

/** The job with one more station in this direction, in degrees. */
export const stationAdded = inDevelopment((d, angle: number) => ({ ...d, extra: [...d.extra, angle] }));

/** The job without the station added last. */
export const stationRemoved = inDevelopment((d) => ({ ...d, extra: d.extra.slice(0, -1) }));
