// What would be read at a place of a development drawn in a certain way?

import { TURN } from "../../numeric/angle";
import { periodicSpline, splineValue } from "../../numeric/spline";
import type { Job } from "../../job/job";
import type { HeightTable } from "./heightTable";
import { type OrdinatePlace, type ReadingPlace, isOrdinate } from "./readings";
import type { Work } from "./work";

/** Places (in spaces) nearer to a whole number than this are the station. */
const STATION = 1e-6;

/**
 * The reading (mm on paper at `scale`; degrees) to be expected: two where an edge runs along the element, none where there is
 * nothing to read. null: this way of drawing says nothing about the place.
 */
export function predictedReading(work: Work, piece: HeightTable, job: Job, scale: number, place: ReadingPlace): readonly number[] | null {
  if (!isOrdinate(place)) return predictedSize(work, piece, job, scale, place);
  const { times, plus } = onPaper(work, scale);
  return predictedHeights(work, piece, place)?.map((height) => times * height + plus) ?? null;
}

/** An ordinate on the paper (mm) is `times` the height on the piece and `plus` this. */
export function onPaper({ downFrom, ordinateFactor }: Work, scale: number): { readonly times: number; readonly plus: number } {
  const times = scale * ordinateFactor;
  return downFrom === null ? { times, plus: 0 } : { times: -times, plus: times * downFrom };
}

/** Stretch-out and spacing (mm on paper), the angle of a cut as drawn (degrees). */
export function predictedSize(work: Work, { developed }: HeightTable, job: Job, scale: number, place: Exclude<ReadingPlace, OrdinatePlace>): readonly number[] {
  if (place.line === "angle") return drawnAngle(work, job, place.cut);
  const { girthDiameter, stepped, spaces, laid, girthFactor } = work;
  const space = scale * girthFactor * (girthDiameter ?? developed) * (stepped ? Math.sin(Math.PI / spaces) : Math.PI / spaces);
  return [place.line === "spacing" ? space : laid * space];
}

function drawnAngle({ changes }: Work, job: Job, id: string): number[] {
  const drawn = changes.reduce((changed, { change }) => change(changed), job);
  const cut = drawn.part.cuts.find((one) => one.id === id);
  return cut?.kind === "plane" ? [cut.angle] : [];
}

/** The heights (mm) on the piece that a work takes for the ordinate of a place; empty and null as above. */
export function predictedHeights(work: Work, piece: HeightTable, { line, at }: OrdinatePlace): readonly number[] | null {
  const { between, divisions, start, towards, slip } = work;
  const place = slip && at >= slip.at ? at + slip.by : at;
  if (slip && place > divisions) return null;
  const on = (station: number) => piece.at(start + (towards * TURN * station) / divisions)[line];
  if (between === "true" || Math.abs(place - Math.round(place)) < STATION) return on(place);
  const before = Math.floor(place);
  const [from, to] = [on(before)[0], on(before + 1)[0]];
  if (from === undefined || to === undefined) return [];
  if (between === "straight") return [from + (place - before) * (to - from)];
  const heights = Array.from({ length: divisions + 1 }, (_, k) => on(k)[0]);
  if (!heights.every((height) => height !== undefined)) return [];
  return [splineValue(periodicSpline(heights.map((_, k) => k), heights), place).value];
}
