import { expect, test } from "vitest";
import type { Cut, Job, OpeningCut, ShapedCut } from "../../../src/core/index";
import { cutWords } from "../../../src/app/describe/cutWords";
import { newCut } from "../../../src/app/describe/newCut";
import { describe as clausesOf } from "../../../src/app/describe/describe";
import { sentenceText } from "../../../src/app/describe/sentenceText";
import type { NumberToken } from "../../../src/app/describe/token";
import { developed, hole, pipeWith, slant } from "../pipe";

const show = ({ value, quantity }: NumberToken) => `${value}${quantity === "angle" ? "°" : ""}`;
const read = (job: Job) => sentenceText(job, show);
const shaped = (profile: ShapedCut["profile"]): Cut => ({ id: "end", on: true, kind: "shaped", end: "top", direction: 0, profile });

test("sentenceText of a pipe with a slant and an opening is read like a drafter's description", () => {
  expect(read(pipeWith([slant, hole]))).toBe(
    "A pipe, ⌀ 90 outside, 220 high, upright. " +
      "Its top is cut at 35° from square, highest at the back, 220 up at its highest point. " +
      "A round opening of ⌀ 40 faces the left, 70 up, through the near wall. " +
      "Marked out inside up. Seam at the shortest element. 16 stations evenly spaced.",
  );
});

test("sentenceText of a lying pipe names right and left end, and the bottom for its right side", () => {
  const job = pipeWith([{ ...slant, direction: 90 }], { attitude: "lying" });
  expect(read(job)).toContain("220 long, lying. Its right end is cut at 35° from square, reaching furthest right at the bottom, 220 from the left end");
});

test("sentenceText gives a direction without a name in figures", () => {
  expect(read(pipeWith([{ ...hole, direction: 95 }]))).toContain("faces an angle of 95° from the front");
});

test("sentenceText says an offset to the right of the middle, a thickness and a turn only where there are any", () => {
  expect(read(pipeWith([{ ...(hole as OpeningCut), offset: 5 }], { thickness: 1 }))).toContain("70 up, 5 to the right, through the near wall. Steel sheet 1 thick, marked out");
  const slot = (turn: number): Cut => ({ ...(hole as OpeningCut), outline: { shape: "slot", width: 20, length: 40, turn } });
  expect(read(pipeWith([slot(0)]))).toContain("A slot 20 wide, 40 high, faces");
  expect(read(pipeWith([slot(0.5)]))).toMatch(/A slot 20 wide, 40 high, turned [\d.]+°, faces/);
});

test("sentenceText leaves out a part that is switched off", () => {
  expect(read(pipeWith([{ ...slant, on: false }]))).not.toContain("cut at");
});

test.each<[string, ShapedCut["profile"], string]>([
  ["hollow", { shape: "hollow", radius: 60, centre: 0, height: 150 }, "its top is a hollow of radius 60, deepest at 150 up, centred on the axis."],
  ["nose", { shape: "nose", radius: 45, centre: 0, height: 200 }, "its top is a round nose of radius 45, its crown at 200 up"],
  ["ogee", { shape: "ogee", low: 140, high: 200, rising: "left", radius: null }, "its top is an ogee from 140 to 200 up, rising to the left, its arcs level at both ends."],
  ["ogee of a radius", { shape: "ogee", low: 140, high: 200, rising: "left", radius: 45 }, "its arcs of radius 45."],
  ["step", { shape: "step", low: 140, high: 200, rising: "right", position: 5 }, "its top is a step from 140 to 200 up, rising to the right, 5 right of the axis."],
  ["vee", { shape: "vee", angle: 90, centre: 0, height: 150 }, "its top is a vee of 90° included, its point 150 up"],
  ["free", { shape: "free", start: { x: -60, z: 150 }, legs: [{ to: { x: 0, z: 200 } }, { to: { x: 60, z: 150 }, radius: 90, turn: "right", long: false }] }, "follows a profile from -60 across, 150 up; goes straight to 0, 200; then an arc by radius to 60, 150 of radius 90 turning right, the short way."],
])("sentenceText of a shaped end says what shape: %s", (_, profile, sentence) => {
  expect(read(pipeWith([shaped(profile)]))).toContain(sentence);
});

test("every number of the description puts its own value back into the same job", () => {
  const job = pipeWith([slant, hole, ...cutWords.map((word) => newCut(pipeWith([]), word))]);
  for (const token of clausesOf(job).flatMap((clause) => clause.tokens)) {
    if (token.kind === "number") expect(token.put(job, token.value), token.key).toEqual(job);
  }
});

test("every number of the description stands at its field of the job file", () => {
  const job = pipeWith([slant, hole, ...cutWords.map((word) => newCut(pipeWith([]), word))]);
  for (const token of clausesOf(job).flatMap((clause) => clause.tokens)) {
    if (token.kind === "number") expect(at(job, token.field), token.field).toBe(token.value);
  }
});

test("keys of the description's fields are all different", () => {
  const keys = clausesOf(pipeWith([slant, hole, ...cutWords.map((word) => newCut(pipeWith([]), word))])).flatMap((clause) => clause.tokens.flatMap((token) => ("key" in token ? [token.key] : [])));
  expect(new Set(keys).size).toBe(keys.length);
});

test("a number token changes its cut also after the cut has moved", () => {
  const token = clausesOf(pipeWith([slant, hole])).flatMap((clause) => clause.tokens).find((one) => one.kind === "number" && one.key === "slope.angle") as NumberToken;
  expect(token.put(pipeWith([hole, slant]), 20).part.cuts[1]).toEqual({ ...slant, angle: 20 });
});

test.each(cutWords)("newCut gives a cut that can be made: %s", (word) => {
  const job = pipeWith([]);
  const made = developed({ ...job, part: { ...job.part, cuts: [newCut(job, word)] } });
  expect(made.notices).toEqual([]);
});

test.each(cutWords)("newCut gives a cut that can be made on a small lying pipe and on a large one: %s", (word) => {
  for (const size of [{ diameter: 12, length: 40, attitude: "lying" as const }, { diameter: 900, length: 300 }]) {
    const job = pipeWith([], size);
    expect(developed({ ...job, part: { ...job.part, cuts: [newCut(job, word)] } }).pieces).toHaveLength(1);
  }
});

function at(job: Job, field: string): unknown {
  return field.split(".").reduce<unknown>((value, name) => (value as Record<string, unknown>)[name], job);
}
