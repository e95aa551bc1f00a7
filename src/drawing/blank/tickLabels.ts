// The numbers of the stations at the net edges, inside the sheet under their ticks; of stations close together every how manyth.

import type { Mark } from "../../core/index";
import type { ClearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import { STEPS, stepFor } from "../thinning";
import type { CutSheet } from "./cutSheet";
import { type Lettered, firstFree } from "./firstFree";
import { TICK } from "./uprightLines";

type Tick = Extract<Mark, { kind: "tick" }>;

/** How far from the end of its tick a number may stand, in lettering heights. */
const FARTHEST = 4;

/** Numbers of the stations of a sheet `girth` mm long, where there is room: the seam's and the roundest first. */
export function tickLabels(ticks: readonly Tick[], girth: number, sheet: CutSheet, space: ClearSpace, metrics: Metrics): Item[] {
  const numbers = ticks.flatMap(({ label }) => (Number.isInteger(Number(label)) ? [Number(label)] : []));
  const widest = Math.max(0, ...numbers.map((number) => textWidth(String(number), metrics.lettering)));
  const step = stepFor(girth / (Math.max(0, ...numbers) + 1), widest + 2 * metrics.gap);
  const ranked = ticks.filter(({ label }) => !(Number(label) % step > 0)).sort((a, b) => rank(b.label) - rank(a.label));
  return ranked.flatMap((tick) => firstFree(onSheet(choices(tick, metrics), sheet, metrics), space));
}

/** The greatest step of even thinning that keeps a number; what carries a letter comes last. */
function rank(label: string): number {
  const number = Number(label);
  if (!Number.isInteger(number)) return 0;
  return number === 0 ? Infinity : STEPS.reduce<number>((best, step) => (number % step === 0 ? step : best), 0);
}

/** Under the tick, or beside the line that stands there, farther and farther from the edge. */
function* choices({ label, at, into }: Tick, { lettering, gap }: Metrics): Generator<Lettered> {
  const width = textWidth(label, lettering);
  const aside = width / 2 + gap;
  for (let away = 0; away <= FARTHEST; away += 0.25) {
    const middle = TICK + gap + lettering / 2 + away * lettering;
    for (const side of [0, 1, -1]) {
      const text: TextItem = {
        kind: "text", pen: "lettering", text: label, height: lettering, align: "middle", turn: 0,
        at: { x: at.x + side * aside, y: at.y + middle * into.y - lettering / 2 },
      };
      yield { text };
    }
  }
}

function* onSheet(choices: Iterable<Lettered>, sheet: CutSheet, { lettering }: Metrics): Generator<Lettered> {
  for (const choice of choices) {
    const { x, y } = choice.text.at;
    if (sheet.holds({ x, y: y + lettering / 2 })) yield choice;
  }
}
