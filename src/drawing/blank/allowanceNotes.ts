// The sum of every allowance: written in its strip where that is straight and wide enough, else led to it.

import { type Allowance, type Contour, type ContourSegment, type Segment, type Vec2, pathLength, segmentPoint } from "../../core/index";
import type { ClearSpace } from "../clearSpace";
import type { Item } from "../display";
import type { Figures } from "../figures";
import { leader } from "../dimension/leader";
import type { Metrics } from "../metrics";
import { allowanceSum } from "./allowanceSum";
import type { BlankWords } from "./blankWords";
import { type Lettered, firstFree } from "./firstFree";

/** Shares of a strip's length at which its sum is tried. */
const SHARES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9];

/** Shares of a strip's width from its rim at which it is tried: bend lines may run along the strip. */
const ACROSS = [0.5, 0.33, 0.4, 0.27, 0.67, 0.6, 0.73];

/** How far from the strip a led note is tried, in lettering heights: first inwards, then outwards. */
const AWAY = [3, 5, 8, 12, 17, -3, -5, -8, -12];

/** A strip with less room than this many lettering heights across is led to. */
const ROOM = 1.7;

/** One note for each stretch of cut line that an allowance made. */
export function allowanceNotes(
  allowances: readonly Allowance[], contours: readonly Contour[], space: ClearSpace, metrics: Metrics, figures: Figures, words: BlankWords,
): Item[] {
  return allowances.flatMap((allowance) => contours.flatMap(({ segments }) => {
    const outer = outerRun(segments, allowance);
    return outer.length === 0 ? [] : firstFree(choices(outer, allowance, metrics, allowanceSum(allowance, figures, words)), space);
  }));
}

/** The outer edge of an allowance, its two notches left off. */
function outerRun(segments: readonly ContourSegment[], { place }: Allowance): Segment[] {
  const begin = segments.findIndex(({ allowance }, i) => allowance === place && segments.at(i - 1)?.allowance !== place);
  if (begin < 0) return [];
  const turned = [...segments.slice(begin), ...segments.slice(0, begin)];
  const past = turned.findIndex(({ allowance }) => allowance !== place);
  return turned.slice(1, (past < 0 ? turned.length : past) - 1);
}

function* choices(outer: readonly Segment[], { width }: Allowance, metrics: Metrics, text: string): Generator<Lettered> {
  const { lettering, gap } = metrics;
  const places = SHARES.flatMap((share) => placeAt(outer, share));
  if (width >= ROOM * lettering) for (const across of ACROSS) for (const { at, out } of places) {
    const middle = { x: at.x - out.x * width * across, y: at.y - out.y * width * across };
    if (Math.abs(out.x) > 1 - 1e-6) yield { text: { kind: "text", pen: "lettering", text, height: lettering, align: "middle", turn: Math.PI / 2, at: { x: middle.x + lettering / 2, y: middle.y } } };
    if (Math.abs(out.y) > 1 - 1e-6) yield { text: { kind: "text", pen: "lettering", text, height: lettering, align: "middle", turn: 0, at: { x: middle.x, y: middle.y - lettering / 2 } } };
  }
  for (const away of AWAY) {
    for (const { at, out } of places) {
      const tip = { x: at.x - (out.x * width) / 2, y: at.y - (out.y * width) / 2 };
      for (const lean of [1, -1]) {
        const reach = Math.sign(away) * width / 2 + away * lettering;
        const end = { x: tip.x - out.x * reach + lean * (0.5 * Math.abs(away) * lettering * Math.abs(out.y) + gap), y: tip.y - out.y * reach + 0.5 * Math.abs(out.x) * Math.abs(away) * lettering * lean };
        const [line, shelf, head, note] = leader(tip, end, text, { clause: "part" }, metrics);
        yield { text: note, leading: [line, shelf, head] };
      }
    }
  }
}

/** A place on the run with the way out of the sheet. */
function placeAt(run: readonly Segment[], share: number): { at: Vec2; out: Vec2 }[] {
  let left = share * pathLength(run);
  for (const segment of run) {
    const length = pathLength([segment]);
    if (left > length) {
      left -= length;
      continue;
    }
    const u = left / length;
    const [before, after] = [segmentPoint(segment, Math.max(0, u - 1e-3)), segmentPoint(segment, Math.min(1, u + 1e-3))];
    const along = Math.hypot(after.x - before.x, after.y - before.y);
    return [{ at: segmentPoint(segment, u), out: { x: (after.y - before.y) / along, y: (before.x - after.x) / along } }];
  }
  return [];
}
