import { parseQuantity, radians, type Job, type Piece, type Reading, type ReadingPlace, type Readings, type Rule } from "../../core/index";
import type { Fault } from "../store/attempt";
import { type ReadPlaces, placeKey, readPlaces } from "./places";
import { scaleFactor, scaleOf, type Sheet } from "./sheet";

// What was typed, as numbers: texts that cannot be read are faults by the key of their field, and are left out of the check.

export interface TypedReadings {
  readonly places: ReadPlaces;
  readonly readings: Readings;
  readonly rule: Rule;
  readonly faults: Readonly<Record<string, Fault>>;
}

const COUNT = { min: 4, max: 360 };

/** The readings of a sheet for the piece of a job; `field` keys: those of places, and "count", "start". */
export function typedReadings(job: Job, piece: Piece, sheet: Sheet): TypedReadings {
  const faults: Record<string, Fault> = {};
  const number = (key: string, text: string, kind: "length" | "angle" | "count", otherwise: number, allowed?: (value: number) => Fault | null): number => {
    if (text.trim() === "") return otherwise;
    const parsed = parseQuantity(text, { units: job.units, kind });
    const fault: Fault | null = parsed.ok ? (allowed?.(parsed.value) ?? null) : { kind: "quantity", reason: parsed.reason };
    if (fault) faults[key] = fault;
    return parsed.ok && !fault ? parsed.value : otherwise;
  };
  const count = number("count", sheet.count, "count", job.development.stations, countFault);
  const start = number("start", sheet.start, "angle", NaN);
  const { seam, towards } = piece.pattern;
  const own = Number.isNaN(start) && sheet.along === "pattern";
  const places = readPlaces(job, piece, count, own);
  const values = placesIn(places).flatMap((place): Reading[] => {
    const key = placeKey(place);
    const value = number(key, sheet.readings[key] ?? "", place.line === "angle" ? "angle" : "length", NaN);
    return Number.isNaN(value) ? [] : [{ ...place, value }];
  });
  return {
    places, faults,
    readings: { scale: scaleFactor(scaleOf(sheet, job)), count, start: Number.isNaN(start) ? seam : radians(start), towards: sheet.along === "pattern" ? towards : (-towards as 1 | -1), values },
    rule: job.marking,
  };
}

/** All places in the order they are read. */
export function placesIn({ angles, blocks }: ReadPlaces): ReadingPlace[] {
  return [
    { line: "stretchOut" }, { line: "spacing" }, ...angles.map((cut) => ({ line: "angle" as const, cut })),
    ...blocks.flatMap(({ lines, rows }) => rows.flatMap(({ at }) => lines.map((line) => ({ line, at })))),
  ];
}

function countFault(value: number): Fault | null {
  if (!Number.isInteger(value)) return { kind: "problem", problem: { code: "not-whole", field: "development.stations", value } };
  return value >= COUNT.min && value <= COUNT.max ? null : outOf(value < COUNT.min ? "too-small" : "too-large", value, COUNT.min, COUNT.max, "development.stations");
}

function outOf(code: "too-small" | "too-large", value: number, min: number, max: number, field: string): Fault {
  return { kind: "problem", problem: { code, field, value, min, max } };
}
