// The ordinates of a pattern in figures, each along its element: one of a whole element just off the stretch-out line, else beside the
// ends they belong to. Where elements stand too close for that, each in its own element, in as many rows as it takes, or over its end.

import type { Piece } from "../../core/index";
import type { Block } from "../board/board";
import { boundsOfItem } from "../bounds";
import type { Box } from "../box";
import { clearSpace } from "../clearSpace";
import { unionOf } from "../view/contour";
import type { PathItem, TextItem } from "../display";
import type { Figures } from "../figures";
import { textWidth } from "../lettering";
import { evenStations } from "./evenStations";
import { metricsFor } from "../metrics";
import { onSheet } from "../place";
import { stroke } from "../strokes";

/** Between a figure and its element, and the ends of the element, in gaps; of one in its element, between it and the ends. */
const BESIDE = 0.6, BEFORE = 1.5, WITHIN = 0.6;

/** How far along its element a figure beside it, paper mm, is tried. */
const SHIFTS = [0, 3, 6, 10, 15, 20];

/** In how small steps a figure in its element is moved, and how far at most over its end, paper mm. */
const STEP = 1, OVER = 45;

/**
 * Elements as far apart as this, lettering heights, have room for a figure beside either; divided into less than that, two rows do not
 * hold them; and nearer than the last to its neighbour, an element is not told from it.
 */
const APART = 2.7, PITCH = 0.58, NEAR = 0.35;

/** More stations than this without a figure, and all are left to the table. */
const FEW = 6;

/** Paper mm a figure keeps from what is drawn of the pattern. */
const CLEAR = 0.3;

/** Heights under this, mm, are the base line itself. */
const NOTHING = 1e-6;

interface Wanted {
  readonly z: number;
  /** Where along the element the figure begins or ends, mm. */
  readonly at: number;
  readonly align: "start" | "end";
}

export interface OrdinateFigures {
  /** Each carries the index of its station. */
  readonly figures: readonly TextItem[];
  /** From the end of an element to the figure over it. */
  readonly leaders: readonly PathItem[];
  /** Stations, by index, of which a figure found no clear place; all when there are no figures. */
  readonly left: readonly number[];
}

/** The figures of one pattern block; `isOpen` tells whether a box beyond it is free. The seam's are written once, at its closing edge. */
export function ordinateFigures({ place, items }: Block, piece: Piece, figures: Figures, lettering: number, isOpen: (box: Box) => boolean): OrdinateFigures {
  const { gap } = metricsFor(lettering);
  const whole = clearSpace(CLEAR), bold = clearSpace(CLEAR);
  whole.take(items);
  bold.take(items.filter((item) => !("pen" in item && (item.pen === "station" || item.pen === "extra station"))));
  const ends = piece.stations.map(({ girth }) => girth * place.scale);
  const places = shortestFirst(piece);
  const pitch = (piece.pattern.girth * place.scale) / Math.max(1, evenStations(piece));
  const widthOf = ({ z }: Wanted) => textWidth(figures.length(z), lettering);
  const row = Math.max(...places.map(({ wanted }) => widthOf(wanted))) + WITHIN * gap;
  const found: TextItem[] = [], leaders: PathItem[] = [], left = new Set<number>();
  for (const { station, from, to, wanted } of places) {
    const { girth } = piece.stations[station] ?? { girth: 0 };
    // Beyond the element only where the figure would not be taken for that of the next.
    const beyond = (ends[station + 1] ?? -Infinity) - (ends[station] ?? 0) > APART * lettering;
    const free = (to - from) * place.scale - widthOf(wanted);
    const beside = (beyond ? [-BESIDE * gap, BESIDE * gap + lettering] : [-BESIDE * gap])
      .flatMap((across) => SHIFTS.filter((shift) => shift <= free - 2 * BEFORE * gap).map((shift) => figureAt(wanted, girth, across, BEFORE * gap + shift)));
    const near = pitch < PITCH * lettering || nearest(ends, station) < NEAR * lettering;
    const steps = stepsTo(free - 2 * WITHIN * gap);
    const inside = near ? [] : [...[0, row].filter((shift) => shift <= free - 2 * WITHIN * gap), ...steps].map((shift) => figureAt(wanted, girth, lettering / 2, WITHIN * gap + shift));
    const over = near || Math.abs(wanted.z - to) > NOTHING ? [] : stepsTo(OVER).map((shift) => figureAt({ ...wanted, at: to, align: "start" }, girth, lettering / 2, BEFORE * gap + shift));
    const isFree = (text: TextItem, space = bold) => space.isFree(boundsOfItem(text));
    const text = beside.find((one) => isFree(one, whole)) ?? inside.find((one) => isFree(one)) ?? over.find((one) => isFree(one) && isOpen(boundsOfItem(one)));
    if (!text) {
      left.add(station);
      continue;
    }
    if (over.includes(text)) leaders.push(stroke("projection", onSheet(place, { x: girth, y: to }), onSheet(place, { x: girth, y: to + reachOf(text, girth, to) })));
    for (const space of [whole, bold]) space.take([text]);
    found.push({ ...text, ref: { clause: "stations", station } });
  }
  if (left.size > FEW) return { figures: [], leaders: [], left: piece.stations.flatMap((_, station) => (station === 0 ? [] : [station])) };
  return { figures: found.sort((a, b) => (a.ref?.station ?? 0) - (b.ref?.station ?? 0)), leaders, left: [...left].sort((a, b) => a - b) };

  function figureAt({ z, at, align }: Wanted, girth: number, across: number, along: number): TextItem {
    const inward = align === "start" ? 1 : -1;
    return {
      kind: "text", pen: "lettering", text: figures.length(z), height: lettering, align, turn: place.turn === 0 ? Math.PI / 2 : 0,
      at: onSheet(place, { x: girth + across / place.scale, y: at + (inward * along) / place.scale }),
    };
  }

  /** How far over the end of its element a figure begins, mm. */
  function reachOf({ at }: TextItem, girth: number, to: number): number {
    const end = onSheet(place, { x: girth, y: to });
    return (place.turn === 0 ? at.y - end.y : at.x - end.x) / place.scale - (BESIDE * gap) / place.scale;
  }
}

/** What is written on one kept stretch. */
function wantedOn(from: number, to: number, count: number): Wanted[] {
  const stands = Math.abs(from) < NOTHING;
  if (stands && count === 1) return [{ z: to, at: from, align: "start" }];
  return [...(stands ? [] : [{ z: from, at: from, align: "start" as const }]), { z: to, at: to, align: "end" }];
}

interface Place {
  readonly station: number;
  /** The kept stretch, mm. */
  readonly from: number;
  readonly to: number;
  readonly wanted: Wanted;
}

/** Everything that is to be written, that of short elements first: it has the fewest places. */
function shortestFirst({ stations }: Piece): Place[] {
  const all = stations.flatMap(({ before, after }, station) => {
    const kept = station === 0 ? [] : unionOf([...before, ...after]);
    return kept.flatMap(({ from, to }) => wantedOn(from, to, kept.length).map((wanted): Place => ({ station, from, to, wanted })));
  });
  return all.sort((a, b) => a.to - a.from - (b.to - b.from) || a.station - b.station);
}

/** Paper mm from an element to the nearest other. */
function nearest(ends: readonly number[], station: number): number {
  const here = ends[station] ?? 0;
  return Math.min(here - (ends[station - 1] ?? -Infinity), (ends[station + 1] ?? Infinity) - here);
}

function stepsTo(room: number): number[] {
  return room < 0 ? [] : Array.from({ length: Math.floor(room / STEP) + 1 }, (_, i) => i * STEP);
}
