// A piece as a card model: its pattern with glue laps along the seam and the ends, and a disc for each flat end; scaled.

import { type Development, type Fabrication, type Job, type Segment, type Vec2, fabricate } from "../../core/index";
import { bendItems, contourItems } from "../blank/cutLines";
import { boundsOf, boundsOfItem } from "../bounds";
import type { Box } from "../box";
import { clearSpace } from "../clearSpace";
import type { Item, PathItem, TextItem } from "../display";
import { LETTERING } from "../lettering";
import { segmentOnSheet } from "../place";
import type { LessonWords } from "./lessonWords";

/** Width of a glue lap on paper, mm: the first that the edges take; and slits in it, a width apart, so that it follows the curve. */
const LAPS = [8, 6, 4];

/** Places for the name, as parts of the stretch-out. */
const PLACES = [0.5, 0.3, 0.7, 0.2, 0.8];

/** Words keep this many mm from lines. */
const CLEAR = 0.4;

export interface CardPart {
  readonly items: readonly Item[];
  readonly bounds: Box;
}

/** The pattern first, then the discs, each about its own origin in paper mm. `heading` is written on the pattern where it has room. */
export function cardParts(development: Development, scale: number, heading: string, words: LessonWords): CardPart[] {
  const made = LAPS.map((lap) => fabricate({ ...development, job: cardJob(development.job, lap / scale) }));
  const whole = made.find(({ problems }) => problems.every(({ code }) => code === "plate-not-flat")) ?? made.at(-1);
  const piece = whole?.pieces[0];
  if (!whole || !piece) throw new RangeError("no piece to make a card model of");
  const lines = [...contourItems(piece.contours), ...bendItems(piece.marks)].map((item) => scaled(item, scale));
  const lap = piece.allowances.find(({ place }) => place === "seam-start");
  const { pattern: { height, girth }, stations } = piece.piece;
  const seam = stations[0]?.top ?? height[1];
  const glue = lap ? firstFree([{ x: (-lap.width * scale) / 2 + LETTERING / 2, y: ((stations[0]?.bottom ?? 0) + seam) / 2 * scale }], words.card.glue, Math.PI / 2, lines) : [];
  const low = lowMiddle(stations, scale);
  const places = PLACES.flatMap((along) => [0, -LETTERING * 3, LETTERING * 3].map((up) => ({ x: girth * scale * along, y: low + up })));
  return [part([...lines, ...glue, ...firstFree(places, heading, 0, lines)]), ...discs(whole, scale)];
}

/** The job with laps in place of what the shop wants; a pipe without thickness. */
function cardJob(job: Job, lap: number): Job {
  const edge = { kind: "flange", width: lap, slits: lap } as const;
  const plate = { fit: "mean", gap: 0 } as const;
  return {
    ...job,
    fabrication: { ...job.fabrication, purpose: "blank", hand: "described", seam: { kind: "lap", width: lap, share: 1 }, edges: { top: edge, bottom: edge }, plates: { top: plate, bottom: plate } },
  };
}

function discs({ plates }: Fabrication, scale: number): CardPart[] {
  return plates.map(({ contour }) => part(contourItems([contour]).map((item) => scaled(item, scale))));
}

function part(items: readonly Item[]): CardPart {
  return { items, bounds: boundsOf(items) };
}

function scaled(item: PathItem, scale: number): PathItem {
  const place = { origin: { x: 0, y: 0 }, scale, turn: 0 } as const;
  return { kind: "path", pen: item.pen, closed: item.closed, segments: item.segments.map((segment: Segment) => segmentOnSheet(place, segment)) };
}

/** The word about the first place where it meets no line; nothing when there is none. */
function firstFree(places: readonly Vec2[], text: string, turn: number, lines: readonly Item[]): TextItem[] {
  const space = clearSpace(CLEAR);
  space.take(lines);
  const words = places.map((at): TextItem => ({ kind: "text", pen: "lettering", text, height: LETTERING, align: "middle", turn, at }));
  return words.filter((word) => space.isFree(boundsOfItem(word))).slice(0, 1);
}

/** Half way up the shortest element, paper mm. */
function lowMiddle(stations: readonly { readonly bottom: number | null; readonly top: number | null }[], scale: number): number {
  const low = Math.max(...stations.map(({ bottom }) => bottom ?? 0)), high = Math.min(...stations.map(({ top }) => top ?? Infinity));
  return ((low + high) / 2) * scale - LETTERING / 2;
}
