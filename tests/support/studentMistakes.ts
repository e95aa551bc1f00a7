import type { Job, Reading, Readings } from "../../src/core/index";
import { developedPipe } from "./developed";
import { carefulStudent, misread, readDrawing, type Student } from "./student";
import { exercise } from "./exercise";
import { randomSource, type RandomSource } from "./randomSource";

/** A mistake as a student makes it: changes the student, and says by what names it may be told. */
type Making = (student: Student, set: Job, source: RandomSource) => readonly string[] | null;

interface MistakeCase {
  readonly name: string;
  readonly wanted?: Parameters<typeof exercise>[1];
  readonly make: Making;
}

const plain = (name: string, change: (student: Student, source: RandomSource) => void): MistakeCase => ({
  name, make: (student, _set, source) => {
    change(student, source);
    return [name];
  },
});

/** Every known mistake; the names are those of the diagnosis, shortened. */
export const MISTAKES: readonly MistakeCase[] = [
  plain("chords", (student) => (student.stepped = true)),
  { name: "basis", wanted: { wall: true }, make: wrongFace },
  plain("radius", (student, source) => (student.girthDiameter = developedPipe(student.job).form.radius * source.pick([1, 4]))),
  plain("seam 180", (student) => (student.turn = 180)),
  { name: "seam a quarter", make: (student, _set, source) => [`seam ${(student.turn = source.pick([90, 270]))}`] },
  { name: "seam some stations", make: (student, _set, source) => [`seam ${(student.turn = 30 * source.pick([1, 2, 4, 5, 7, 8, 10, 11]))}`] },
  plain("reversed", (student) => (student.backwards = true)),
  plain("datum", (student, source) => (student.offset = source.between(2, 12) * source.pick([1, -1]))),
  plain("otherEnd", (student) => (student.downFrom = student.job.part.length)),
  plain("spaces 1", (student, source) => miscount(student, 13, source)),
  plain("spaces -1", (student, source) => miscount(student, 11, source)),
  plain("skipped", (student, source) => (student.slip = { from: source.whole(1, 9), by: 1 })),
  plain("repeated", (student, source) => (student.slip = { from: source.whole(1, 9), by: -1 })),
  { name: "angle", wanted: { plane: true }, make: wrongAngle },
  { name: "direction", wanted: { two: true }, make: wrongWay },
  plain("scale", (student, source) => (student.ordinateScale = student.girthScale = source.pick([2, 0.5, 5, 0.2, source.between(0.85, 0.95), source.between(1.05, 1.15)]))),
  { name: "critical", wanted: { corner: true }, make: (student, _set, source) => ((student.between = source.pick(["straight", "smooth"])), ["critical"]) },
];

function wrongFace(student: Student, set: Job, source: RandomSource): string[] | null {
  const { outside, inside, mean } = developedPipe(set).form;
  if (outside === inside) return null;
  const used = source.pick([outside, inside].filter((one) => one !== mean));
  if (source.chance(0.5)) student.girthDiameter = used;
  else student.job = { ...student.job, part: { ...student.job.part, diameter: used, basis: "mean", thickness: 0 } };
  return ["basis"];
}

function miscount(student: Student, count: number, source: RandomSource): void {
  student.laid = count;
  const where = source.pick(["laid", "girth", "circle"]);
  if (where !== "laid") student.girthParts = count;
  if (where === "circle") student.circleParts = count;
}

function wrongAngle(student: Student, _set: Job, source: RandomSource): string[] | null {
  let right = 0;
  const off = source.pick([1, -1]) * source.between(4, 15);
  student.job = { ...student.job, part: { ...student.job.part, cuts: student.job.part.cuts.map((cut) => {
    if (cut.id !== "plane" || cut.kind !== "plane") return cut;
    right = cut.angle;
    return { ...cut, angle: source.chance(0.4) ? 90 - cut.angle : cut.angle + off };
  }) } };
  return right === 0 || right === 45 ? null : ["angle plane"];
}

function wrongWay(student: Student, set: Job, source: RandomSource): string[] | null {
  const [cut] = set.part.cuts;
  const turn = source.pick([90, 180, 270]);
  if (!cut || set.part.cuts.length < 2) return null;
  student.job = { ...student.job, part: { ...student.job.part, cuts: student.job.part.cuts.map((one) => (one.id === cut.id ? { ...one, direction: (one.direction + turn) % 360 } : one)) } };
  return [`direction ${cut.id} ${turn}`];
}

/** An exercise, how it was drawn, what was read, and what should be named. */
export interface DrawnExercise {
  readonly set: Job;
  readonly exact: Readings;
  readonly read: Readings;
  readonly names: readonly string[];
}

/** What a reading taken for a stray one must be off by, and what a mistake must move one reading by, mm on paper, to be looked for. */
export const SHOWS = 2;

/** Case `n` of a mistake with even reading noise within ± `noise` mm; null when it does not show on this exercise. */
export function drawnWith(mistakes: readonly MistakeCase[], n: number, noise: number): DrawnExercise | null {
  const source = randomSource(7919 * n + 13);
  const set = exercise(n, Object.assign({}, ...mistakes.map(({ wanted }) => wanted ?? {})) as MistakeCase["wanted"]);
  const student = carefulStudent(set);
  const names: string[] = [];
  for (const { make } of mistakes) {
    const made = make(student, set, source);
    if (!made) return null;
    names.push(...made);
  }
  const scale = source.pick([1, 1, 0.5]);
  try {
    const exact = readDrawing(set, student, scale);
    const right = readDrawing(set, carefulStudent(set), scale);
    return mistakes.length === 0 || shows(exact, right) ? { set, exact, read: misread(exact, noise, 3, source), names: names.sort() } : null;
  } catch {
    return null;
  }
}

function shows(one: Readings, other: Readings): boolean {
  const key = ({ value: _, ...place }: Reading) => JSON.stringify(place);
  const values = new Map(other.values.map((reading) => [key(reading), reading.value]));
  return one.values.some((reading) => Math.abs(reading.value - (values.get(key(reading)) ?? reading.value)) > SHOWS);
}

/** Rightly drawn work in which one or two readings are off by 2.5 to 10 mm. */
export function withStrays(n: number, noise: number): DrawnExercise | null {
  const right = drawnWith([], n, noise);
  if (!right) return null;
  const source = randomSource(31 * n + 5);
  const off = (readings: Readings, shifts: ReadonlyMap<number, number>): Readings =>
    ({ ...readings, values: readings.values.map((reading, i) => ({ ...reading, value: reading.value + (shifts.get(i) ?? 0) })) });
  const shifts = new Map(Array.from({ length: source.whole(1, 2) }, () => [source.whole(2, right.read.values.length - 1), source.between(2.5, 10) * source.pick([1, -1])]));
  return { ...right, exact: off(right.read, shifts), read: off(right.read, shifts), names: ["stray"] };
}

/** Work that no known mistake explains: every ordinate off by up to 8 mm. */
export function withoutReason(n: number): DrawnExercise | null {
  const right = drawnWith([], n, 0);
  const source = randomSource(17 * n + 3);
  const off = (readings: Readings): Readings => ({ ...readings, values: readings.values.map((reading, i) => (i < 2 ? reading : { ...reading, value: reading.value + source.between(-8, 8) })) });
  return right && { ...right, read: off(right.read), names: ["unexplained"] };
}
