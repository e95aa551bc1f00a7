import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultJob } from "../../../src/core/job/defaultJob";
import { parseJob } from "../../../src/core/job/parseJob";
import { jobArbitrary } from "./jobArbitrary";

const SMALLEST = { format: "flatwright-job", version: 2, part: { kind: "pipe", diameter: 90, length: 220 } };

const PLANE = { id: "a", kind: "plane", end: "top", angle: 35, height: 100 };
const OPENING = { id: "a", kind: "opening", outline: { shape: "round", diameter: 40 }, height: 70 };

/** The smallest job with `change` written over its part. */
function withPart(change: object): unknown {
  return { ...SMALLEST, part: { ...SMALLEST.part, ...change } };
}

function withCut(cut: unknown): unknown {
  return withPart({ cuts: [cut] });
}

function withProfile(profile: object): unknown {
  return withCut({ id: "a", kind: "shaped", end: "top", profile });
}

function withDevelopment(change: object): unknown {
  return { ...SMALLEST, development: change };
}

function problemsOf(data: unknown): unknown {
  const parsed = parseJob(data);
  return parsed.ok ? [] : parsed.problems;
}

function jobOf(data: unknown) {
  const parsed = parseJob(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.job;
}

describe("parseJob of a good job", () => {
  it("parseJob gives back an equal job", () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        expect(parseJob(job)).toEqual({ ok: true, job });
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it("parseJob shares nothing with the data", () => {
    const data = defaultJob();
    const job = jobOf(data);
    data.part.cuts.length = 0;
    data.development.extra.push(1);
    expect(job).toEqual(defaultJob());
  });

  it("parseJob fills in the documented defaults", () => {
    expect(jobOf(SMALLEST)).toEqual({
      format: "flatwright-job",
      version: 2,
      title: "",
      note: "",
      units: "mm",
      part: {
        kind: "pipe",
        diameter: 90,
        basis: "outside",
        thickness: 0,
        length: 220,
        attitude: "upright",
        cuts: [],
      },
      development: { seam: { at: "shortest" }, stations: 12, critical: false, extra: [], face: "inside" },
      drawing: { projection: "first", sheetScale: null },
      fabrication: {
        purpose: "blank", surface: "mean", kFactor: 0.5, paper: 0.1, hand: "described", material: "steel", density: null, gauge: null, quantity: 1,
        seam: { kind: "butt", gap: 0 }, edges: { top: { kind: "none" }, bottom: { kind: "none" } }, plates: { top: null, bottom: null },
      },
      marking: { tolerance: 1, angle: 1, girth: "exact", items: [] },
      readings: null,
      exercise: { ranges: [], seams: [], hands: [], keeps: { inside: true, ordinate: 0, sheet: null }, seed: 1 },
    });
  });

  it("parseJob wants every number of a range, and a step", () => {
    const part = { ...SMALLEST, exercise: { ranges: [{ field: "part.diameter", from: 30, step: 0 }] } };
    expect(parseJob(part)).toMatchObject({
      ok: false, problems: [{ code: "missing", field: "exercise.ranges.0.to" }, { code: "too-small", field: "exercise.ranges.0.step" }],
    });
  });

  it("parseJob fills in the defaults of a scheme and of readings", () => {
    const marked = { ...SMALLEST, marking: { items: [{ id: "a", marks: -2 }] }, readings: {} };
    expect(jobOf(marked).marking.items).toEqual([{ id: "a", text: "", marks: -2, by: "eye" }]);
    expect(jobOf(marked).readings).toEqual({ scale: null, count: "", start: "", along: "pattern", values: [], marks: [] });
  });

  it("parseJob wants the width of what is added", () => {
    const hemmed = { ...SMALLEST, fabrication: { edges: { top: { kind: "hem" } }, seam: { kind: "lap" } } };
    expect(parseJob(hemmed)).toMatchObject({
      ok: false, problems: [{ code: "missing", field: "fabrication.seam.width" }, { code: "missing", field: "fabrication.edges.top.width" }],
    });
  });

  it("parseJob gives two jobs no list in common", () => {
    jobOf(SMALLEST).part.cuts.push({ ...jobOf(withCut(PLANE)).part.cuts[0]! });
    expect(jobOf(SMALLEST).part.cuts).toEqual([]);
  });

  it("parseJob fills in the defaults of a plane", () => {
    expect(jobOf(withCut(PLANE)).part.cuts[0]).toEqual({ ...PLANE, on: true, direction: 0, at: "axis" });
  });

  it("parseJob fills in the defaults of an opening", () => {
    expect(jobOf(withCut(OPENING)).part.cuts[0]).toEqual({
      ...OPENING,
      on: true,
      direction: 0,
      offset: 0,
      through: "near",
    });
  });

  it("parseJob keeps a script in a title as the text it is", () => {
    const title = '<script>alert("x")</script>';
    expect(jobOf({ ...SMALLEST, title }).title).toBe(title);
  });

  it("parseJob accepts both ends of a range", () => {
    expect([problemsOf(withPart({ length: 1 })), problemsOf(withPart({ length: 50_000 }))]).toEqual([[], []]);
  });
});

describe("parseJob of what is no job", () => {
  it.each([[null], [undefined], [7], ["flatwright-job"], [[]], [[SMALLEST]], [{}], [{ format: "other", version: 2 }]])(
    "parseJob says that %j is not a job",
    (data) => expect(problemsOf(data)).toEqual([{ code: "not-a-job", field: "" }]),
  );
});

describe("parseJob at the field", () => {
  const cases: [string, unknown, unknown][] = [
    ["a missing part", { ...SMALLEST, part: undefined }, { code: "missing", field: "part" }],
    ["a part that is a list", { ...SMALLEST, part: [] }, { code: "wrong-type", field: "part" }],
    ["a part of another kind", withPart({ kind: "cone" }), { code: "unknown-choice", field: "part.kind", value: "cone" }],
    ["a missing diameter", withPart({ diameter: undefined }), { code: "missing", field: "part.diameter" }],
    ["a diameter in words", withPart({ diameter: "90" }), { code: "not-a-number", field: "part.diameter", value: "90" }],
    ["a diameter of null", withPart({ diameter: null }), { code: "not-a-number", field: "part.diameter", value: null }],
    ["a diameter that is NaN", withPart({ diameter: NaN }), { code: "not-a-number", field: "part.diameter", value: NaN }],
    [
      "an endless diameter",
      withPart({ diameter: Infinity }),
      { code: "too-large", field: "part.diameter", value: Infinity, max: 20_000 },
    ],
    ["a diameter of nothing", withPart({ diameter: 0 }), { code: "too-small", field: "part.diameter", value: 0, min: 1 }],
    ["a negative length", withPart({ length: -5 }), { code: "too-small", field: "part.length", value: -5, min: 1 }],
    [
      "an absurd length",
      withPart({ length: 1e300 }),
      { code: "too-large", field: "part.length", value: 1e300, max: 50_000 },
    ],
    ["a negative thickness", withPart({ thickness: -1 }), { code: "too-small", field: "part.thickness", value: -1, min: 0 }],
    ["an unknown basis", withPart({ basis: "bore" }), { code: "unknown-choice", field: "part.basis", value: "bore" }],
    ["a number for a word", withPart({ basis: 3 }), { code: "wrong-type", field: "part.basis", value: 3 }],
    ["cuts that are no list", withPart({ cuts: {} }), { code: "wrong-type", field: "part.cuts" }],
    ["a cut that is a number", withCut(7), { code: "wrong-type", field: "part.cuts.0", value: 7 }],
    ["a cut that is a list", withCut([]), { code: "wrong-type", field: "part.cuts.0" }],
    ["a cut without kind", withCut({ id: "a" }), { code: "missing", field: "part.cuts.0.kind" }],
    [
      "a cut of an unknown kind",
      withCut({ ...PLANE, kind: "saw" }),
      { code: "unknown-choice", field: "part.cuts.0.kind", value: "saw" },
    ],
    [
      "a plane along the axis",
      withCut({ ...PLANE, angle: 90 }),
      { code: "too-large", field: "part.cuts.0.angle", value: 90, max: 89.9 },
    ],
    ["a cut switched with a word", withCut({ ...PLANE, on: "yes" }), { code: "wrong-type", field: "part.cuts.0.on", value: "yes" }],
    ["an empty id", withCut({ ...PLANE, id: "" }), { code: "wrong-type", field: "part.cuts.0.id", value: "" }],
    ["an id with capitals", withCut({ ...PLANE, id: "Top" }), { code: "wrong-type", field: "part.cuts.0.id", value: "Top" }],
    [
      "an id of 41 letters",
      withCut({ ...PLANE, id: "a".repeat(41) }),
      { code: "too-long", field: "part.cuts.0.id", value: "a".repeat(41), max: 40 },
    ],
    [
      "an unknown profile",
      withProfile({ shape: "star" }),
      { code: "unknown-choice", field: "part.cuts.0.profile.shape", value: "star" },
    ],
    [
      "a vee without opening",
      withProfile({ shape: "vee", angle: 0, height: 9 }),
      { code: "too-small", field: "part.cuts.0.profile.angle", value: 0, min: 1 },
    ],
    [
      "an ogee without a rising side",
      withProfile({ shape: "ogee", low: 1, high: 2 }),
      { code: "missing", field: "part.cuts.0.profile.rising" },
    ],
    [
      "a chain without legs",
      withProfile({ shape: "free", start: { x: 0, z: 0 }, legs: [] }),
      { code: "too-small", field: "part.cuts.0.profile.legs", min: 1 },
    ],
    [
      "a leg that goes nowhere",
      withProfile({ shape: "free", start: { x: 0, z: 0 }, legs: [{}] }),
      { code: "missing", field: "part.cuts.0.profile.legs.0.to" },
    ],
    [
      "a leg that is null",
      withProfile({ shape: "free", start: { x: 0, z: 0 }, legs: [null] }),
      { code: "wrong-type", field: "part.cuts.0.profile.legs.0", value: null },
    ],
    [
      "an arc of no radius",
      withProfile({ shape: "free", start: { x: 0, z: 0 }, legs: [{ to: { x: 1, z: 1 }, radius: 0, turn: "left" }] }),
      { code: "too-small", field: "part.cuts.0.profile.legs.0.radius", value: 0, min: 0.01 },
    ],
    [
      "an arc with a broken centre",
      withProfile({
        shape: "free",
        start: { x: 0, z: 0 },
        legs: [{ to: { x: 1, z: 1 }, centre: { x: 1, z: "0" }, turn: "left" }],
      }),
      { code: "not-a-number", field: "part.cuts.0.profile.legs.0.centre.z", value: "0" },
    ],
    [
      "an opening without size",
      withCut({ ...OPENING, outline: { shape: "round" } }),
      { code: "missing", field: "part.cuts.0.outline.diameter" },
    ],
    [
      "an unknown wall",
      withCut({ ...OPENING, through: "far" }),
      { code: "unknown-choice", field: "part.cuts.0.through", value: "far" },
    ],
    [
      "three stations",
      withDevelopment({ stations: 3 }),
      { code: "too-small", field: "development.stations", value: 3, min: 4 },
    ],
    [
      "half a station",
      withDevelopment({ stations: 12.5 }),
      { code: "not-whole", field: "development.stations", value: 12.5 },
    ],
    [
      "an unknown seam",
      withDevelopment({ seam: { at: "top" } }),
      { code: "unknown-choice", field: "development.seam.at", value: "top" },
    ],
    ["a seam in words", withDevelopment({ seam: "front" }), { code: "wrong-type", field: "development.seam", value: "front" }],
    ["a seam angle left out", withDevelopment({ seam: { at: "angle" } }), { code: "missing", field: "development.seam.angle" }],
    [
      "an extra station off the circle",
      withDevelopment({ extra: [10, 400] }),
      { code: "too-large", field: "development.extra.1", value: 400, max: 360 },
    ],
    ["a title that is a number", { ...SMALLEST, title: 5 }, { code: "wrong-type", field: "title", value: 5 }],
    ["a title of 121 letters", { ...SMALLEST, title: "t".repeat(121) }, { code: "too-long", field: "title", value: "t".repeat(121), max: 120 }],
    ["a long note, not repeated", { ...SMALLEST, note: "n".repeat(2001) }, { code: "too-long", field: "note", max: 2000 }],
    ["unknown units", { ...SMALLEST, units: "cubit" }, { code: "unknown-choice", field: "units", value: "cubit" }],
    ["a drawing that is null", { ...SMALLEST, drawing: null }, { code: "wrong-type", field: "drawing", value: null }],
  ];
  it.each(cases)("parseJob says at the field what is wrong with %s", (_, data, problem) =>
    expect(problemsOf(data)).toEqual([problem]),
  );

  it("parseJob says all the fields that are wrong", () => {
    expect(problemsOf({ ...SMALLEST, units: "cubit", part: { kind: "pipe", diameter: 0, length: 0 } })).toMatchObject([
      { field: "units" },
      { field: "part.diameter" },
      { field: "part.length" },
    ]);
  });

  it("parseJob takes 64 cuts and no more", () => {
    const cuts = Array.from({ length: 65 }, (_, index) => ({ ...PLANE, id: `cut-${index}` }));
    expect([problemsOf(withPart({ cuts: cuts.slice(1) })), problemsOf(withPart({ cuts }))]).toEqual([
      [],
      [{ code: "too-many", field: "part.cuts", max: 64 }],
    ]);
  });
});

describe("parseJob of fields it does not know", () => {
  it("parseJob refuses an unknown field at the top", () => {
    expect(problemsOf({ ...SMALLEST, colour: "red" })).toEqual([{ code: "unknown-field", field: "colour" }]);
  });

  it("parseJob refuses a mistyped field of a cut", () => {
    expect(problemsOf(withCut({ ...PLANE, hight: 5 }))).toEqual([{ code: "unknown-field", field: "part.cuts.0.hight" }]);
  });

  it("parseJob refuses a leg with both radius and centre", () => {
    const legs = [{ to: { x: 1, z: 1 }, centre: { x: 0, z: 1 }, radius: 1, turn: "left" }];
    expect(problemsOf(withProfile({ shape: "free", start: { x: 0, z: 0 }, legs }))).toEqual([
      { code: "unknown-field", field: "part.cuts.0.profile.legs.0.radius" },
    ]);
  });

  it.each(["__proto__", "constructor", "toString"])("parseJob refuses a field named %s", (name) => {
    const data: unknown = JSON.parse(JSON.stringify(SMALLEST).replace('"part"', `"${name}":{"polluted":1},"part"`));
    expect(problemsOf(data)).toEqual([{ code: "unknown-field", field: name }]);
  });

  it("parseJob leaves the prototype of objects alone", () => {
    parseJob(JSON.parse('{"__proto__":{"polluted":1},"format":"flatwright-job","version":1,"part":{"__proto__":{"polluted":1}}}'));
    expect("polluted" in {}).toBe(false);
  });
});

describe("parseJob of hostile data", () => {
  it("parseJob says at most 100 problems of fields", () => {
    const cuts = Array.from({ length: 64 }, () => ({ kind: "plane" }));
    expect(problemsOf(withPart({ cuts }))).toHaveLength(100);
  });

  it("parseJob says at most 100 problems between fields", () => {
    const profile = { shape: "step", low: 2, high: 1, rising: "left" };
    const cuts = Array.from({ length: 64 }, () => ({ id: "a", kind: "shaped", end: "top", profile }));
    expect(problemsOf(withPart({ cuts }))).toHaveLength(100);
  });

  it("parseJob never throws on data as from JSON", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (rest) => {
        const data = { ...SMALLEST, part: rest, development: rest };
        expect(parseJob(data).ok).toBe(false);
      }),
      { seed: 2, numRuns: 500 },
    );
  });

  it("parseJob finds a job with one value replaced either good or bad at that value", () => {
    const spoilt = fc.tuple(jobArbitrary, fc.nat(), fc.jsonValue({ maxDepth: 1 })).map(([job, pick, value]) => {
      const copy = structuredClone(job) as unknown as Record<string, unknown>;
      const places = placesIn(copy);
      const { owner, key, path } = places[pick % places.length]!;
      owner[key] = value;
      return { copy, path };
    });
    fc.assert(
      fc.property(spoilt, ({ copy, path }) => {
        const parsed = parseJob(copy);
        if (parsed.ok) return;
        for (const { field } of parsed.problems) expect(related(field, path)).toBe(true);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });
});

interface Place {
  owner: Record<string, unknown>;
  key: string;
  path: string;
}

function placesIn(owner: Record<string, unknown>, prefix = ""): Place[] {
  return Object.entries(owner).flatMap(([key, value]) => {
    const path = prefix + key;
    const inner = typeof value === "object" && value ? placesIn(value as Record<string, unknown>, `${path}.`) : [];
    return [{ owner, key, path }, ...inner];
  });
}

/** Whether a problem may be said at `field` when only the value at `path` was changed: there, inside it, or beside it. */
function related(field: string, path: string): boolean {
  const owner = path.split(".").slice(0, -1).join(".");
  return field.startsWith(owner) || path.startsWith(field);
}
