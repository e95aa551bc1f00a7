import { describe, expect, it, test } from "vitest";
import { type Exercise, exerciseOf, type Keeps, noExercise, variantOfCode, variants, variantSearch } from "../../../src/core/index";
import { openingCut, pipeJob, planeCut, type PlaneCut } from "../../support/pipeJob";

const loose: Keeps = { inside: true, ordinate: 0, sheet: null };

/** School sizes: a cylinder of 30 to 50 by 80, cut at 20 to 60 degrees from square. */
function exercise(change: Partial<Exercise> = {}): Exercise {
  return {
    job: pipeJob({ diameter: 40, length: 80, cuts: [planeCut({ angle: 30, direction: 90, height: 50 })] }),
    ranges: [
      { field: "part.diameter", from: 30, to: 50, step: 1 }, { field: "part.cuts.plane.angle", from: 20, to: 60, step: 5 }, { field: "part.cuts.plane.height", from: 35, to: 55, step: 2.5 },
    ],
    seams: [], hands: [], keeps: loose, seed: 1, ...change,
  };
}

function jobsOf(one: Exercise, count = 30) {
  const made = variants(one, count);
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  return made.variants;
}

const plane = (job: Exercise["job"]) => job.part.cuts[0] as PlaneCut;

/** Derived: half the diameter times the tangent of the angle is how far the cut lies above and below its height on the axis. */
const rise = (job: Exercise["job"]) => (job.part.diameter / 2) * Math.tan((plane(job).angle * Math.PI) / 180);

describe("thirty variants", () => {
  const made = jobsOf(exercise());

  it("are thirty, with thirty codes and thirty sets of dimensions", () => {
    expect(made).toHaveLength(30);
    expect(new Set(made.map(({ code }) => code)).size).toBe(30);
    expect(new Set(made.map(({ job }) => `${job.part.diameter}/${plane(job).angle}/${plane(job).height}`)).size).toBe(30);
  });

  it("lie in their ranges, on the steps", () => {
    for (const { job } of made) {
      for (const [value, from, to, step] of [[job.part.diameter, 30, 50, 1], [plane(job).angle, 20, 60, 5], [plane(job).height, 35, 55, 2.5]] as const) {
        expect(value).toBeGreaterThanOrEqual(from);
        expect(value).toBeLessThanOrEqual(to);
        expect((value - from) % step).toBe(0);
      }
    }
  });

  it("keep the cut inside the pipe", () => {
    for (const { job } of made) {
      expect(plane(job).height + rise(job)).toBeLessThanOrEqual(job.part.length + 1e-9);
      expect(plane(job).height - rise(job)).toBeGreaterThan(0);
    }
  });

  it("are the same when they are made again, and the first of a longer list", () => {
    expect(jobsOf(exercise())).toEqual(made);
    expect(jobsOf(exercise(), 40).slice(0, 30)).toEqual(made);
  });

  it("are spread over the ranges", () => {
    expect(new Set(made.map(({ job }) => job.part.diameter)).size).toBeGreaterThan(12);
    expect(new Set(made.map(({ job }) => plane(job).angle)).size).toBeGreaterThan(5);
  });

  it("come back from their codes", () => {
    for (const { code, job } of made) expect(variantOfCode(exercise(), code)).toEqual({ ok: true, code, job });
  });

  it("differ with another seed", () => {
    expect(jobsOf(exercise({ seed: 2 })).map(({ job }) => job)).not.toEqual(made.map(({ job }) => job));
  });
});

describe("what every variant keeps to", () => {
  it("takes a cut whose highest point just reaches the end of the pipe, at any angle", () => {
    const job = pipeJob({ diameter: 90, length: 220, cuts: [planeCut({ angle: 30, direction: 180, at: "high", height: 220 })] });
    expect(jobsOf(exercise({ job, ranges: [{ field: "part.cuts.plane.angle", from: 20, to: 45, step: 0.5 }] }), 51)).toHaveLength(51);
  });

  it("holds the least ordinate: the low point of the cut stands that high, seen at a station", () => {
    for (const { job } of jobsOf(exercise({ keeps: { ...loose, ordinate: 25 } }), 10)) expect(plane(job).height - rise(job)).toBeGreaterThanOrEqual(25 - 1e-9);
  });

  it("fits the pattern on the sheet, either way round", () => {
    for (const { job } of jobsOf(exercise({ keeps: { ...loose, sheet: { width: 75, height: 120 } } }), 10)) expect(Math.PI * job.part.diameter).toBeLessThanOrEqual(120);
  });

  it("keeps an opening off the cut and off other openings", () => {
    const job = pipeJob({ diameter: 40, length: 80, cuts: [
      planeCut({ angle: 0, height: 70 }), openingCut({ shape: "round", diameter: 10 }, { id: "a", height: 40 }), openingCut({ shape: "round", diameter: 10 }, { id: "b", height: 20 }),
    ] });
    const one: Exercise = { job, ranges: [{ field: "part.cuts.a.height", from: 21, to: 80, step: 1 }], seams: [], hands: [], keeps: loose, seed: 3 };
    const heights = jobsOf(one, 30).map((variant) => (variant.job.part.cuts[1] as { height: number }).height);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(30);
    expect(Math.max(...heights)).toBeLessThanOrEqual(65);
  });
});

describe("seams and hands", () => {
  it("are chosen among those given, each once", () => {
    const made = jobsOf(exercise({ ranges: [], seams: [{ at: "shortest" }, { at: "front" }, { at: "front" }], hands: ["described", "opposite"] }), 4);
    expect(new Set(made.map(({ job }) => `${job.development.seam.at} ${job.fabrication.hand}`)).size).toBe(4);
  });

  it("that give the same answers count once: the shortest element of this cut is on the left", () => {
    const made = variants(exercise({ ranges: [], seams: [{ at: "shortest" }, { at: "left" }] }), 2);
    expect(made).toMatchObject({ ok: false, fault: { kind: "too-few", found: 1, tried: 2, failed: { alike: 1 } } });
  });
});

describe("ranges that cannot be met", () => {
  const fails = (change: Partial<Exercise>) => {
    const made = variants(exercise(change), 5);
    return made.ok || made.fault.kind !== "too-few" ? made : made.fault;
  };

  it("say that no cut stays inside", () => {
    expect(fails({ ranges: [{ field: "part.cuts.plane.height", from: 75, to: 90, step: 0.1 }] })).toMatchObject({ found: 0, failed: { inside: 151, ordinate: 0, sheet: 0 } });
  });

  it("say that the ordinates are too short", () => {
    expect(fails({ keeps: { ...loose, ordinate: 60 } })).toMatchObject({ found: 0, failed: { sheet: 0, makeable: 0 } });
    expect((fails({ keeps: { ...loose, ordinate: 60 } }) as { failed: { ordinate: number } }).failed.ordinate).toBeGreaterThan(100);
  });

  it("say that the sheet is too small", () => {
    expect((fails({ keeps: { ...loose, sheet: { width: 50, height: 50 } } }) as { failed: { sheet: number } }).failed.sheet).toBeGreaterThan(100);
  });

  it("say that the job cannot be made", () => {
    expect(fails({ ranges: [{ field: "part.diameter", from: -5, to: 0, step: 0.5 }] })).toMatchObject({ found: 0, tried: 11, failed: { makeable: 11 } });
  });

  it("say that there are too few values", () => {
    expect(fails({ ranges: [{ field: "part.diameter", from: 40, to: 42, step: 1 }] })).toMatchObject({ found: 3, tried: 3, failed: { alike: 0 } });
  });

  for (const [what, range, fault] of [
    ["names no number", { field: "part.kind", from: 1, to: 2, step: 1 }, "no-such-number"],
    ["names a cut that is not there", { field: "part.cuts.gone.angle", from: 1, to: 2, step: 1 }, "no-such-number"],
    ["reaches outside the job", { field: "part.__proto__.x", from: 1, to: 2, step: 1 }, "no-such-number"],
    ["names what is no dimension", { field: "version", from: 1, to: 2, step: 1 }, "no-such-number"],
    ["has no step", { field: "part.diameter", from: 1, to: 2, step: 0 }, "no-step"],
    ["is upside down", { field: "part.diameter", from: 3, to: 2, step: 1 }, "upside-down"],
    ["is no number", { field: "part.diameter", from: NaN, to: 2, step: 1 }, "not-a-number"],
    ["has too many values", { field: "part.diameter", from: 1, to: 2, step: 1e-9 }, "too-many-values"],
  ] as const) {
    it(`are refused when a range ${what}`, () => expect(variants(exercise({ ranges: [range] }), 3)).toEqual({ ok: false, fault: { kind: "range", field: range.field, fault } }));
  }

  it("are refused when two are for one number", () => {
    const range = { field: "part.diameter", from: 30, to: 40, step: 1 };
    expect(variants(exercise({ ranges: [range, range] }), 3)).toEqual({ ok: false, fault: { kind: "twice", field: "part.diameter" } });
  });

  it("stay with their cut when the cuts change places", () => {
    const plane = planeCut({ angle: 30, height: 60 }), hole = openingCut({ shape: "round", diameter: 10 }, { id: "hole", height: 20 });
    for (const cuts of [[plane, hole], [hole, plane]]) {
      const one = exercise({ job: pipeJob({ diameter: 40, length: 80, cuts }), ranges: [{ field: "part.cuts.hole.height", from: 15, to: 25, step: 1 }] });
      for (const { job } of jobsOf(one, 8)) expect(job.part.cuts.find(({ id }) => id === "plane")).toEqual(plane);
    }
  });

  it("and counts that are none are a broken promise", () => {
    for (const count of [0, -1, 1.5, NaN, 5001]) expect(() => variants(exercise(), count)).toThrow(RangeError);
  });
});

describe("a code", () => {
  const [{ code, job }] = jobsOf(exercise(), 1) as [{ code: string; job: Exercise["job"] }];

  it("is short, and is read in small letters and without its hyphen", () => {
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{5}-[0-9A-HJKMNP-TV-Z]{2,4}$/);
    expect(variantOfCode(exercise(), ` ${code.toLowerCase().replace("-", "")} `)).toEqual({ ok: true, code, job });
  });

  it("does not change with the title, the note or the units", () => {
    const other = exercise();
    expect(variantOfCode({ ...other, job: { ...other.job, title: "Vent", note: "for Monday", units: "inch" } }, code).ok).toBe(true);
  });

  it("of another exercise, or of this one changed, is refused", () => {
    const other = exercise();
    expect(variantOfCode({ ...other, job: { ...other.job, part: { ...other.job.part, length: 81 } } }, code)).toEqual({ ok: false, reason: "another-exercise" });
    expect(variantOfCode(exercise({ seed: 9 }), code)).toEqual({ ok: false, reason: "another-exercise" });
  });

  it("with any one letter mistyped is refused", () => {
    const letters = code.replace("-", "");
    for (let i = 0; i < letters.length; i++) {
      const wrong = letters[i] === "7" ? "8" : "7";
      expect(variantOfCode(exercise(), letters.slice(0, i) + wrong + letters.slice(i + 1)).ok).toBe(false);
    }
  });

  it("that is none is refused", () => {
    for (const text of ["", "!", "ABC", "ü".repeat(9), "9".repeat(60)]) expect(variantOfCode(exercise(), text)).toEqual({ ok: false, reason: "not-a-code" });
  });
});

describe("a search", () => {
  const few = exercise({ ranges: [{ field: "part.cuts.plane.height", from: 40, to: 75, step: 5 }] });

  it("looks at every way to choose once and tells what became of it: the cut rises 40 · tan 30° / 2 = 11.5 above its height, under 80", () => {
    const last = [...variantSearch(few)].at(-1);
    expect(last).toMatchObject({ all: 8n, tried: 8, failed: { inside: 2, alike: 0 } });
    expect(last?.found.map(({ job }) => plane(job).height).sort()).toEqual([40, 45, 50, 55, 60, 65]);
  });

  it("gives the variants in the order of the class", () => {
    expect([...variantSearch(few)].at(-1)?.found.slice(0, 4)).toEqual(jobsOf(few, 4));
  });
});

test("a job carries its exercise, and a variant of it carries none", () => {
  const { job, ...choices } = exercise();
  const carried = exerciseOf({ ...job, exercise: choices });
  expect(jobsOf(carried, 3).map(({ code }) => code)).toEqual(jobsOf(exercise(), 3).map(({ code }) => code));
  for (const one of jobsOf(carried, 3)) expect(one.job.exercise).toEqual(noExercise());
});
