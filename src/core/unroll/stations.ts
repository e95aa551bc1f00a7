// The stations: even divisions of the girth numbered from the seam, extra ones where asked, each with its element.

import { angleBetween, degrees, radians, wrapTurn } from "../numeric/angle";
import { distinctAngles } from "../numeric/distinctAngles";
import { ANGLE_NOISE } from "../numeric/tolerance";
import type { Pipe } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import type { Span } from "../trim/spans";
import { type Stretch, stretchesAround } from "../trim/stretches";

/** One straight element of the surface and what is kept of it. */
export interface RuledElement {
  /** Direction in radians, [0, 2π). */
  readonly theta: number;
  /** mm from the seam along the stretch-out. */
  readonly girth: number;
  /** Kept stretches just before and just after the element in the order of the girth: different where an edge runs along it. */
  readonly before: readonly Stretch[];
  readonly after: readonly Stretch[];
  /** Ordinates in mm of the lower and upper end (the outermost of both sides), null when nothing is kept. */
  readonly bottom: number | null;
  readonly top: number | null;
  /** Kept length of the element in mm, openings not counted (the longer side where they differ). */
  readonly length: number;
  /** Gaps between kept stretches, low to high. */
  readonly openings: readonly { readonly from: number; readonly to: number }[];
}

export interface Station extends RuledElement {
  /** "0", "1", …; extra stations carry the number before them and a letter: "3a". */
  readonly label: string;
  readonly mark: "even" | "critical" | "added" | "closing";
}

/** Where the stations stand. Angles in radians; count even divisions from the seam; towards: 1 with growing θ, -1 against. */
export interface StationPlan {
  readonly seam: number;
  readonly count: number;
  readonly towards: 1 | -1;
  readonly critical: readonly number[];
  readonly added: readonly number[];
}

/** All stations in the order of the girth; the last, "closing", is station 0 again at the other seam edge. */
export function stationsOf(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[], plan: StationPlan): Station[] {
  const { seam, count, towards } = plan;
  const seamDegrees = degrees(seam);
  const station = (label: string, theta: number, girth: number, mark: Station["mark"]): Station =>
    ({ label, mark, ...ruledElement(pipe, cutters, spans, { theta, girth, towards }) });
  const even = Array.from({ length: count }, (_, k) => {
    const theta = k === 0 ? seam : wrapTurn(radians(seamDegrees + (towards * 360 * k) / count));
    return station(String(k), theta, (pipe.girth * k) / count, "even");
  });
  const extras = extraPlaces(plan, even).map(({ theta, mark }) => {
    const turn = wrapTurn(towards * (theta - seam));
    return station("", theta, pipe.radius * turn, mark);
  });
  const closing = station("0", seam, pipe.girth, "closing");
  return named([...even, ...extras].sort((a, b) => a.girth - b.girth)).concat(closing);
}

/** The element at a place of the girth; `towards` as in a plan. Exact. */
export function ruledElement(
  pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[], { theta, girth, towards }: { theta: number; girth: number; towards: 1 | -1 },
): RuledElement {
  const around = stretchesAround(pipe, cutters, spans, theta);
  const [before, after] = towards > 0 ? [around.before, around.after] : [around.after, around.before];
  return { theta, girth, before, after, ...summary(before, after) };
}

function extraPlaces({ critical, added }: StationPlan, even: readonly Station[]): { theta: number; mark: "critical" | "added" }[] {
  const taken = (theta: number) => even.some((station) => angleBetween(station.theta, theta) < 10 * ANGLE_NOISE);
  const wanted = distinctAngles([...critical, ...added].map(wrapTurn), 10 * ANGLE_NOISE).filter((theta) => !taken(theta));
  const isCritical = (theta: number) => critical.some((place) => angleBetween(place, theta) < 10 * ANGLE_NOISE);
  return wanted.map((theta) => ({ theta, mark: isCritical(theta) ? "critical" : "added" }));
}

function named(stations: readonly Station[]): Station[] {
  let last = "0";
  let letter = 0;
  return stations.map((station) => {
    if (station.label !== "") {
      last = station.label;
      letter = 0;
      return station;
    }
    return { ...station, label: last + letters(letter++) };
  });
}

/** a … z, aa, ab, … */
function letters(n: number): string {
  const letter = String.fromCharCode(97 + (n % 26));
  return n < 26 ? letter : letters(Math.floor(n / 26) - 1) + letter;
}

function summary(before: readonly Stretch[], after: readonly Stretch[]): Pick<Station, "bottom" | "top" | "length" | "openings"> {
  const all = [...before, ...after];
  const kept = (stretches: readonly Stretch[]) => stretches.reduce((sum, { from, to }) => sum + to - from, 0);
  const fuller = kept(after) > kept(before) ? after : before;
  const openings = fuller.slice(1).map((stretch, i) => ({ from: fuller[i]?.to ?? stretch.from, to: stretch.from }));
  return {
    bottom: all.length > 0 ? Math.min(...all.map(({ from }) => from)) : null,
    top: all.length > 0 ? Math.max(...all.map(({ to }) => to)) : null,
    length: kept(fuller), openings,
  };
}

