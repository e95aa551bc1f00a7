import { describe, expect, it } from "vitest";
import { diagnose, type Diagnosis, type Mistake, type Reading, type Readings } from "../../../../src/core/index";
import { confusionRow, confusionTable } from "../../../support/confusion";
import { expectClose } from "../../../support/approximate";
import { drawnWith } from "../../../support/studentMistakes";
import { pipeJob, planeCut, openingCut } from "../../../support/pipeJob";

// A mitre of 45° on 100 mm, seam at the shortest element, written out by the classical formula: ordinate k of 12 is 80 - 50 cos(30° k).
const job = pipeJob({ diameter: 100, length: 200, cuts: [planeCut({ angle: 45, height: 80, direction: 0 })], seam: { at: "shortest" } });
const ordinate = (k: number): number => 80 - 50 * Math.cos((Math.PI * k) / 6);
const GIRTH = 100 * Math.PI;
const RULE = { tolerance: 1, stepped: false };

function read(ordinates: readonly (number | null)[], stretchOut: number, spacing = GIRTH / 12, set = job): Readings {
  const tops = ordinates.flatMap((value, at): Reading[] => (value === null ? [] : [{ line: "top", at, value }]));
  return { scale: 1, count: 12, start: Math.PI, towards: 1, values: set === job ? [{ line: "stretchOut", value: stretchOut }, { line: "spacing", value: spacing }, ...tops] : tops };
}

const stations = (change: (k: number) => number): number[] => Array.from({ length: 13 }, (_, k) => change(k));
const half = (value: number): number => Math.round(value * 2) / 2;
const named = (diagnosis: Diagnosis): readonly Mistake[] => (diagnosis.kind === "explained" ? diagnosis.explanation.mistakes : []);

describe("diagnose", () => {
  it("calls work right whose readings are all within the tolerance", () => {
    expect(diagnose(job, read(stations((k) => half(ordinate(k))), half(GIRTH)), RULE).kind).toBe("right");
  });

  it("names chord stepping from a stretch-out of 310.6 mm", () => {
    // 12 × 100 sin 15° (DIS-02: 3.5764 mm short).
    expect(named(diagnose(job, read(stations(ordinate), 310.5, 26), RULE))).toEqual([{ kind: "chords", done: true }]);
  });

  it("names equal parts of the girth where chords are the rule", () => {
    expect(named(diagnose(job, read(stations(ordinate), GIRTH, GIRTH / 12), { ...RULE, stepped: true }))).toEqual([{ kind: "chords", done: false }]);
  });

  it("finds a datum offset to a tenth of a millimetre, also with a stray reading and four missing", () => {
    const ordinates = stations((k) => half(ordinate(k) + 5)).map((value, k) => ([1, 4, 8, 11].includes(k) ? null : k === 6 ? value - 9 : value));
    const [mistake] = named(diagnose(job, read(ordinates, GIRTH), RULE));
    expect(mistake?.kind).toBe("datum");
    if (mistake?.kind === "datum") expectClose(mistake.offset, 5, 0.15);
  });

  it("finds the angle that was drawn to half a degree", () => {
    const drawn = Math.tan((38 * Math.PI) / 180);
    const [mistake] = named(diagnose(job, read(stations((k) => half(80 - 50 * drawn * Math.cos((Math.PI * k) / 6))), GIRTH), RULE));
    expect(mistake?.kind).toBe("angle");
    if (mistake?.kind === "angle") expectClose(mistake.angle, 38, 0.5);
  });

  it("finds a cut drawn nearly square", () => {
    const [mistake] = named(diagnose(job, read(stations((k) => half(80 - 50 * Math.tan(Math.PI / 360) * Math.cos((Math.PI * k) / 6))), GIRTH), RULE));
    expect(mistake?.kind).toBe("angle");
    if (mistake?.kind === "angle") expectClose(mistake.angle, 0.5, 0.5);
  });

  it("says at which station an ordinate was skipped", () => {
    expect(named(diagnose(job, read(stations((k) => ordinate(k < 4 ? k : k + 1)), GIRTH), RULE))).toEqual([{ kind: "skipped", at: 4 }]);
  });

  it("names two mistakes made together", () => {
    const both = named(diagnose(job, read(stations((k) => 200 - ordinate(k)), 310.58, 25.88), RULE));
    expect(both.map(({ kind }) => kind).sort()).toEqual(["chords", "otherEnd"]);
  });

  it("lists stray readings with what they are off by", () => {
    const diagnosis = diagnose(job, read(stations((k) => ordinate(k) + (k === 3 ? 6 : 0)), GIRTH), RULE);
    expect(diagnosis.kind === "explained" && diagnosis.explanation.strays).toEqual([{ line: "top", at: 3, value: ordinate(3) + 6 }]);
  });

  it("explains no four readings by two mistakes and a stray: whatever they are, something of that kind fits", () => {
    const tops = [99, 98, 97, 96].map((value, at): Reading => ({ line: "top", at, value }));
    expect(diagnose(job, { ...read([], GIRTH), values: tops }, RULE).kind).toBe("unexplained");
    // One mistake, borne out by four, is named.
    const datum = [0, 2, 4, 6].map((at): Reading => ({ line: "top", at, value: ordinate(at) + 5 }));
    expect(named(diagnose(job, { ...read([], GIRTH), values: datum }, RULE)).map(({ kind }) => kind)).toEqual(["datum"]);
  });

  it("calls an angle less than a degree off no mistake: a little of the noise laid to it makes no second account", () => {
    // Read off a photograph: every ordinate half a millimetre off as an angle of 45.5° would have it, and one 4 mm.
    const lean = 80 - 50 * Math.tan((45.5 * Math.PI) / 180);
    const diagnosis = diagnose(job, read(stations((k) => 80 - (80 - lean) * Math.cos((Math.PI * k) / 6) + (k === 5 ? 4 : 0)), GIRTH), RULE);
    expect(diagnosis).toMatchObject({ kind: "explained", explanation: { mistakes: [], strays: [{ at: 5 }] } });
  });

  it("says that a reversed order would not have shown on a symmetrical piece", () => {
    expect(diagnose(job, read(stations(ordinate), GIRTH), RULE).unseen).toContainEqual({ kind: "reversed" });
  });

  it("gives both accounts where the seam and the cut cannot be told apart", () => {
    const two = { ...job, part: { ...job.part, cuts: [...job.part.cuts, openingCut({ shape: "round", diameter: 16 }, { height: 14 })] } };
    const diagnosis = diagnose(two, read(stations((k) => ordinate(k + 6)), GIRTH, GIRTH / 12, two), RULE);
    expect(diagnosis.kind === "alike" && diagnosis.explanations.map(({ mistakes }) => mistakes.map(({ kind }) => kind).join())).toEqual(["seam", "direction"]);
  });

  it("names nothing from fewer than four readings, and from another exercise's", () => {
    expect(diagnose(job, read([90], GIRTH), RULE).kind).toBe("too-few");
    expect(diagnose(job, read([31, 77, 42, 12, 55, 90, 14, 63, 8, 41, 70, 22, 31], 187, 15.6), RULE).kind).toBe("unexplained");
  });

  it("refuses what no drawing can give", () => {
    expect(() => diagnose(job, { ...read([1], 2), scale: 0 }, RULE)).toThrow(RangeError);
    expect(() => diagnose(job, { ...read([1], 2), count: 3 }, RULE)).toThrow(RangeError);
    expect(() => diagnose(job, read([NaN], 2), RULE)).toThrow(RangeError);
    expect(() => diagnose(job, read([1], 2), { ...RULE, tolerance: 0 })).toThrow(RangeError);
  });
});

describe("the diagnosis of seeded exercises read within ±0.5 mm", () => {
  const rows = confusionTable(2, 0.5, 400);

  it("names right work right", () => {
    expect(rows[0]).toMatchObject({ mistake: "none", named: 2 });
  });

  it("names at least 95 in 100 single mistakes, and leaves what no mistake explains unexplained", () => {
    const single = rows.slice(1, -1);
    const judged = single.reduce((sum, { named, alike, unexplained, wrong }) => sum + named + alike + unexplained + wrong.size, 0);
    expect(judged).toBeGreaterThan(36);
    expect(single.reduce((sum, row) => sum + row.named, 0)).toBeGreaterThanOrEqual(0.95 * judged);
  });

  it("finds no mistake in right work drawn so unsurely that readings leave the tolerance", () => {
    const row = confusionRow("none, unsure", (n) => drawnWith([], n, 1.2), 4, 900);
    expect([...row.wrong.keys()].filter((names) => names !== "stray")).toEqual([]);
  });
});
