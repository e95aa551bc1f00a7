import { keptAt, type Job, type Piece, type Reading, type ReadLine, type Readings } from "../../src/core/index";
import { developedPipe } from "./developed";
import type { RandomSource } from "./randomSource";

/**
 * A student who draws the development of a pipe, rightly or with mistakes, and what is then read off the paper. Written apart from the diagnosis: ordinates
 * come from the kept stretches of the piece the student had in mind.
 */
export interface Student {
  /** The piece drawn. */
  job: Job;
  /** mm, by which the stretch-out is reckoned; null: the drawn piece's own. */
  girthDiameter: number | null;
  stepped: boolean;
  /** Spaces laid out, parts of the girth, parts of the circle, instead of the right number. */
  laid: number;
  girthParts: number;
  circleParts: number;
  /** Degrees added to the place of the seam along the numbering. */
  turn: number;
  backwards: boolean;
  /** From this station on, the next one's ordinate (1) or the one's before (-1). */
  slip: { from: number; by: 1 | -1 } | null;
  /** Height (mm) ordinates are measured down from. */
  downFrom: number | null;
  /** mm on paper added to every ordinate. */
  offset: number;
  ordinateScale: number;
  girthScale: number;
  /** The edge led from station to station: as it truly runs, in straight lines, or smoothly by the four stations round about (Catmull and Rom). */
  between: "true" | "straight" | "smooth";
}

/** A student who makes no mistake with a job of 12 stations. */
export function carefulStudent(job: Job): Student {
  return {
    job, girthDiameter: null, stepped: false, laid: 12, girthParts: 12, circleParts: 12, turn: 0, backwards: false, slip: null, downFrom: null, offset: 0,
    ordinateScale: 1, girthScale: 1, between: "true",
  };
}

/** What a reader with a steady hand reads of it, at the places of the job's own pattern: all of them, without noise. `scale` is that of the exercise. */
export function readDrawing(set: Job, student: Student, scale: number): Readings {
  const right = developedPipe(set);
  const { seam, towards } = right.pattern;
  const drawn = developedPipe({ ...student.job, development: { ...student.job.development, critical: false, seam: { at: "angle", angle: (seam * 180) / Math.PI } } });
  const values: Reading[] = [];
  const diameter = student.girthDiameter ?? 2 * drawn.form.radius;
  const space = diameter * (student.stepped ? Math.sin(Math.PI / student.girthParts) : Math.PI / student.girthParts) * student.girthScale * scale;
  values.push({ line: "stretchOut", value: space * student.laid }, { line: "spacing", value: space });
  const lines = (["top", "bottom", "lower", "upper"] as const).filter((line) => line === "top" || varies(right, line));
  for (const station of right.stations) {
    const at = station.mark === "closing" ? 12 : (station.girth * 12) / right.pattern.girth;
    for (const line of lines) {
      if (height(right, station.theta, line) === null) continue;
      const value = ordinate(drawn, student, { line, at: Math.abs(at - Math.round(at)) < 1e-9 ? Math.round(at) : at, seam, towards }, scale);
      if (value !== null) values.push({ line, at: Math.abs(at - Math.round(at)) < 1e-9 ? Math.round(at) : at, value });
    }
  }
  return { scale, count: 12, start: seam, towards, values };
}

/** A line is read when it is not level, an opening's edges always. */
function varies(piece: Piece, line: ReadLine): boolean {
  const heights = piece.stations.flatMap(({ theta }) => height(piece, theta, line) ?? []);
  return line === "bottom" ? Math.max(...heights) - Math.min(...heights) > 1e-6 : heights.length > 0;
}

function ordinate(piece: Piece, student: Student, { line, at, seam, towards }: { line: ReadLine; at: number; seam: number; towards: number }, scale: number): number | null {
  const place = student.slip && at >= student.slip.from ? at + student.slip.by : at;
  const on = (station: number): number | null => {
    const along = (2 * Math.PI * station) / student.circleParts;
    return height(piece, seam + towards * ((student.turn * Math.PI) / 180 + (student.backwards ? -along : along)), line);
  };
  const before = Math.floor(place);
  const around = [-1, 0, 1, 2].map((step) => on(before + step) ?? 0) as [number, number, number, number];
  const z = student.between === "true" || place === before ? on(place) : student.between === "straight" ? straight(around, place - before) : smooth(around, place - before);
  if (z === null) return null;
  return (student.downFrom === null ? z : student.downFrom - z) * student.ordinateScale * scale + student.offset;
}

function straight([, from, to]: [number, number, number, number], u: number): number {
  return from + u * (to - from);
}

function smooth([a, b, c, d]: [number, number, number, number], u: number): number {
  return b + (u * (c - a + u * (2 * a - 5 * b + 4 * c - d + u * (3 * (b - c) + d - a)))) / 2;
}

function height(piece: Piece, theta: number, line: ReadLine): number | null {
  const { before, after } = keptAt(piece, theta);
  const length = (side: typeof before) => side.reduce((sum, { from, to }) => sum + to - from, 0);
  const side = length(after) > length(before) ? after : before;
  if (line === "top") return side.at(-1)?.to ?? null;
  if (line === "bottom") return side[0]?.from ?? null;
  return side.length < 2 ? null : line === "lower" ? side[0]!.to : side[1]!.from;
}

/** The readings as a hand on the rule takes them: even noise within ± `noise` mm, up to `missing` of the ordinates not measured. */
export function misread(readings: Readings, noise: number, missing: number, source: RandomSource): Readings {
  const values = readings.values.map((reading) => ({ ...reading, value: reading.value + source.between(-noise, noise) }));
  for (let gone = source.whole(0, missing); gone > 0; gone--) values.splice(source.whole(2, values.length - 1), 1);
  return { ...readings, values };
}

