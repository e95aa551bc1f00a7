// Will these stations do? How far the smooth curve through them strays from the true edge, and what would mend it.

import { angleBetween } from "../numeric/angle";
import type { Vec2 } from "../geometry/vector";
import type { Piece } from "../part/pipePiece";
import { criticalPlaces } from "../unroll/criticalPlaces";
import { type Station, type StationPlan, stationsOf } from "../unroll/stations";
import { distanceToSmooth } from "./distanceToSmooth";
import { type SmoothEnd, smoothEnd, smoothPoints } from "./smoothCurve";
import { trueEnd } from "./trueEnd";

export interface Adequacy {
  /** The smooth curve meant: a cubic spline through the stations, broken at stations on a corner. */
  readonly curve: "cubic spline";
  /**
   * mm: greatest distance of the true edge from the smooth curve, and the place on the true edge. Infinity when no two stations
   * in a row meet this end: then there is no curve. Its θ is in radians, any turn.
   */
  readonly deviation: number;
  readonly at: { readonly theta: number; readonly girth: number; readonly z: number };
  /** The same between every two neighbouring stations; from and to are girth positions in mm. */
  readonly perSpan: readonly { readonly from: number; readonly to: number; readonly deviation: number }[];
  /** mm and share of the girth lost by stepping chords round the circle instead of πD. */
  readonly chordLoss: number;
  readonly chordLossRatio: number;
  /** The smallest customary count whose even stations alone stay under the tolerance, null when none does. */
  readonly enough: number | null;
  /** The one extra station that helps most, null when none helps; deviation in mm with it. */
  readonly oneExtra: { readonly theta: number; readonly deviation: number } | null;
  /** The smooth curve in pattern coordinates, in chains (mm). */
  readonly smooth: readonly (readonly Vec2[])[];
}

/** Counts that divide into the customary quadrants of three, four or six (common practice). */
export const CUSTOMARY_COUNTS = [8, 12, 16, 24, 32, 36, 48, 64, 72, 96, 120, 144, 180, 240, 360] as const;

/** The adequacy of a piece's stations for one end, against a `tolerance` in mm (> 0). @throws RangeError for another tolerance. */
export function adequacy(piece: Piece, end: "top" | "bottom", { tolerance }: { tolerance: number }): Adequacy {
  if (!(tolerance > 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in (0, ∞)`);
  const edge = trueEnd(piece, end);
  const smooth = smoothEnd(piece, piece.stations, end);
  const worst = worstPoint(smooth, edge, Infinity);
  const { radius, girth } = piece.form;
  const { seam, towards } = piece.pattern;
  const count = piece.stations.filter(({ mark }) => mark === "even").length;
  const chordLoss = girth - 2 * radius * count * Math.sin(Math.PI / count);
  const good = worst.deviation <= tolerance;
  return {
    curve: "cubic spline", deviation: worst.deviation,
    at: { theta: seam + (towards * worst.point.x) / radius, girth: worst.point.x, z: worst.point.y },
    perSpan: spanDeviations(piece.stations, smooth, edge),
    chordLoss, chordLossRatio: chordLoss / girth,
    enough: enoughStations(piece, end, edge, tolerance),
    oneExtra: good ? null : bestExtra(piece, end, edge, worst),
    smooth: smoothPoints(smooth),
  };
}

interface Worst {
  readonly deviation: number;
  readonly point: Vec2;
}

/** The point of the edge farthest from the curve; the search ends at the first point beyond `limit`. */
function worstPoint(smooth: SmoothEnd, edge: readonly Vec2[], limit: number): Worst {
  let worst: Worst = { deviation: 0, point: edge[0] ?? { x: 0, y: 0 } };
  for (const point of edge) {
    const deviation = distanceToSmooth(smooth, point, worst.deviation);
    if (deviation > worst.deviation) worst = { deviation, point };
    if (worst.deviation > limit) break;
  }
  return worst;
}

function spanDeviations(stations: readonly Station[], smooth: SmoothEnd, edge: readonly Vec2[]): Adequacy["perSpan"] {
  const spans = stations.slice(1).map(({ girth: to }, i) => ({ from: stations[i]?.girth ?? 0, to, deviation: 0 }));
  for (const point of edge) {
    const span = spans.find(({ to }) => point.x <= to) ?? spans.at(-1);
    if (span) span.deviation = Math.max(span.deviation, distanceToSmooth(smooth, point, span.deviation));
  }
  return spans;
}

function enoughStations(piece: Piece, end: "top" | "bottom", edge: readonly Vec2[], tolerance: number): number | null {
  for (const count of CUSTOMARY_COUNTS) {
    const stations = planned(piece, { count, added: [] });
    if (worstPoint(smoothEnd(piece, stations, end), edge, tolerance).deviation <= tolerance) return count;
  }
  return null;
}

/** Try the place of the greatest deviation and every corner and turning place of the edges. */
function bestExtra(piece: Piece, end: "top" | "bottom", edge: readonly Vec2[], worst: Worst): Adequacy["oneExtra"] {
  const { form, cutters, trimmed, pattern, stations } = piece;
  const own = pattern.seam + (pattern.towards * worst.point.x) / form.radius;
  const critical = criticalPlaces(cutters, trimmed.edges, pattern.seam);
  const count = stations.filter(({ mark }) => mark === "even").length;
  const extras = stations.flatMap(({ mark, theta }) => (mark === "critical" || mark === "added" ? [theta] : []));
  const places = [own, ...critical].filter((place, i, all) => all.findIndex((other) => angleBetween(other, place) < 1e-6) === i);
  let best: Adequacy["oneExtra"] = null;
  for (const theta of places) {
    if (stations.some((station) => angleBetween(station.theta, theta) < 1e-6)) continue;
    const least = best?.deviation ?? worst.deviation;
    const trial = planned(piece, { count, added: [...extras, theta] });
    const { deviation } = worstPoint(smoothEnd(piece, trial, end), edge, least);
    if (deviation < least) best = { theta, deviation };
  }
  return best;
}

function planned({ form, cutters, trimmed, pattern }: Piece, { count, added }: Pick<StationPlan, "count" | "added">): Station[] {
  const { seam, towards } = pattern;
  return stationsOf(form, cutters, trimmed.spans, { seam, towards, count, added, critical: [] });
}

