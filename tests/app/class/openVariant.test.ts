// @vitest-environment jsdom
import { beforeEach, expect, test } from "vitest";
import { exerciseOf, variants, type Job } from "../../../src/core/index";
import { openedFrom } from "../../../src/app/class/openedPieces";
import { leavePiece, openCode, openLinked } from "../../../src/app/class/openVariant";
import { packVariant } from "../../../src/app/class/packedVariant";
import { variantJob } from "../../../src/app/class/variantJob";
import { writeVariantLink } from "../../../src/app/class/variantLink";
import { rememberScale } from "../../../src/app/teach/sheets/rememberScale";
import { replaceJob } from "../../../src/app/store/changes";
import { useApp } from "../../../src/app/store/store";
import { pipeWith, slant } from "../pipe";

const exercise: Job = { ...pipeWith([slant]), exercise: { ...pipeWith([]).exercise, ranges: [{ field: "part.diameter", from: 70, to: 110, step: 1 }] } };
const third = () => {
  const made = variants(exerciseOf(exercise), 3);
  if (!made.ok || !made.variants[2]) throw new Error("no variants");
  return made.variants[2];
};
const onBoard = () => useApp.getState().development.job;

beforeEach(() => {
  replaceJob(exercise);
  window.history.replaceState(null, "", "#check");
  localStorage.clear();
});

test("a code brings its piece on the board, its title with the code, and the exercise can be brought back", async () => {
  const { code, job } = third();
  expect(await openCode(` ${code.toLowerCase()} `)).toBeNull();
  expect(onBoard()).toEqual({ ...job, title: `Vent, ${code}` });
  expect(useApp.getState().message).toMatchObject({ kind: "set-aside", job: exercise });
});

test("a further code is looked up in the exercise of the piece on the board, which can be put back", async () => {
  const made = variants(exerciseOf(exercise), 2);
  const codes = made.ok ? made.variants.map(({ code }) => code) : [];
  for (const code of codes) {
    expect(await openCode(code)).toBeNull();
    expect(onBoard().title).toBe(`Vent, ${code}`);
  }
  await leavePiece();
  expect(onBoard()).toEqual(exercise);
  expect(openedFrom(onBoard())).toBeNull();
});

test("a code that is none, mistyped or of another exercise says so and changes nothing", async () => {
  const { code } = third();
  expect(await openCode("Vent")).toBe("not-a-code");
  expect(await openCode(code.replace(/.$/, (letter) => (letter === "0" ? "1" : "0")))).toBe("mistyped");
  expect(onBoard()).toEqual(exercise);
  replaceJob({ ...exercise, exercise: { ...exercise.exercise, seed: 2 } });
  expect(await openCode(code)).toBe("another-exercise");
});

test("a link brings its piece on the board without the exercise, and leaves an address that does not open it again", async () => {
  const variant = third();
  const link = writeVariantLink("http://school.example/", { code: variant.code, packed: await packVariant(variantJob(variant)) });
  replaceJob(pipeWith([]));
  window.history.replaceState(null, "", new URL(link).hash);
  await openLinked(window.location.hash);
  expect(onBoard()).toEqual(variantJob(variant));
  expect(window.location.hash).toBe("#check");
});

test("by its code or by its link, a piece comes at the scale its sheets were made at, and the code stays the same", async () => {
  const { code } = third();
  rememberScale(exercise, 0.5);
  expect(await openCode(code)).toBeNull();
  expect(onBoard().drawing.sheetScale).toBe("1:2");
  const packed = await packVariant(onBoard());
  replaceJob(pipeWith([]));
  await openLinked(new URL(writeVariantLink("http://school.example/", { code, packed })).hash);
  expect(onBoard().drawing.sheetScale).toBe("1:2");
});

test("sheets made of a job that is on the board no more leave the one there as it is", () => {
  rememberScale(pipeWith([slant], { diameter: 80 }), 0.5);
  expect(onBoard()).toEqual(exercise);
});

test("a damaged link says so, and the job on the board stays", async () => {
  await openLinked("#check/5KQ2M-3F?of=1AAAA");
  expect(onBoard()).toEqual(exercise);
  expect(useApp.getState().message).toMatchObject({ kind: "file", fault: { problem: { code: "not-a-job" } } });
});

test("a title too long for the code is shortened", () => {
  const { title } = variantJob({ code: "5KQ2M-3F", job: { ...exercise, title: "x".repeat(120) } });
  expect(title).toHaveLength(120);
  expect(title.endsWith(", 5KQ2M-3F")).toBe(true);
  expect(variantJob({ code: "5KQ2M-3F", job: { ...exercise, title: "" } }).title).toBe("5KQ2M-3F");
});
