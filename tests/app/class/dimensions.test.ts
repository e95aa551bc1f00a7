import { describe, expect, test } from "vitest";
import { exerciseFault, exerciseOf, type Job } from "../../../src/core/index";
import { switched, withoutRange, withRange } from "../../../src/app/class/changeExercise";
import { dimensionsOf, fieldById, firstRange } from "../../../src/app/class/dimensions";
import { namedSeams, seamName } from "../../../src/app/class/namedSeams";
import { TRADE } from "../../../src/drawing/tradeWords";
import { hole, pipeWith, slant } from "../pipe";

const trade = TRADE["stretch-out"];
const job = pipeWith([slant, hole]);
const angle = (degrees: number) => `${degrees}°`;

describe("the numbers that may differ", () => {
  const all = dimensionsOf(job, trade);

  test("are those of the description, a cut by its id and directions in figures", () => {
    expect(all.map(({ field }) => field)).toEqual([
      "part.diameter", "part.length", "part.cuts.slope.angle", "part.cuts.slope.direction", "part.cuts.slope.height",
      "part.cuts.branch.outline.diameter", "part.cuts.branch.direction", "part.cuts.branch.height", "part.cuts.branch.offset", "part.thickness", "development.stations",
    ]);
  });

  test("leave out a cut that is off", () => {
    const off: Job = { ...job, part: { ...job.part, cuts: [slant, { ...hole, on: false }] } };
    expect(dimensionsOf(off, trade).some(({ field }) => field.includes("branch"))).toBe(false);
  });

  test("each have a range to begin with that can be searched, in mm and in inches", () => {
    for (const units of ["mm", "inch"] as const) {
      const ranges = all.map((one) => firstRange(one, units));
      expect(exerciseFault({ ...exerciseOf(job), ranges })).toBeNull();
      for (const { from, to, step } of ranges) expect((to - from) / step).toBeGreaterThanOrEqual(1);
    }
  });

  test("of a direction begin with the four sides", () => {
    const direction = all.find(({ field }) => field === "part.cuts.slope.direction");
    expect(direction && firstRange(direction, "mm")).toEqual({ field: "part.cuts.slope.direction", from: 0, to: 270, step: 90 });
  });

  test("keep a path that names no cut as it is", () => {
    expect(fieldById(job, "part.cuts.9.angle")).toBe("part.cuts.9.angle");
  });
});

describe("changing an exercise", () => {
  const range = { field: "part.diameter", from: 80, to: 100, step: 5 };

  test("puts a range in, changes it where it stands, and takes it out", () => {
    const two = withRange(withRange(job.exercise, range), { ...range, field: "part.length" });
    expect(withRange(two, { ...range, to: 120 }).ranges).toEqual([{ ...range, to: 120 }, { ...range, field: "part.length" }]);
    expect(withoutRange(two, "part.diameter").ranges).toEqual([{ ...range, field: "part.length" }]);
  });

  test("puts a choice in once and takes it out again", () => {
    const seams = switched(switched([{ at: "front" }], { at: "back" }, true), { at: "back" }, true);
    expect(seams).toEqual([{ at: "front" }, { at: "back" }]);
    expect(switched(seams, { at: "front" }, false)).toEqual([{ at: "back" }]);
  });
});

describe("the seams", () => {
  test("are those of the description, and that of the job at its angle", () => {
    expect(namedSeams(job, trade, angle).map(({ name }) => name)).toEqual(["shortest element", "longest element", "front", "right", "back", "left"]);
    const turned: Job = { ...job, development: { ...job.development, seam: { at: "angle", angle: 30 } } };
    expect(namedSeams(turned, trade, angle).at(-1)).toEqual({ seam: { at: "angle", angle: 30 }, name: "30°" });
  });

  test("are named as the pipe lies", () => {
    expect(seamName({ at: "left" }, pipeWith([slant], { attitude: "lying" }), trade, angle)).toBe("top");
    expect(seamName({ at: "angle", angle: 12 }, job, trade, angle)).toBe("12°");
  });
});
