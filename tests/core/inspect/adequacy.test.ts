import { describe, expect, it } from "vitest";
import { type Adequacy, CUSTOMARY_COUNTS, adequacy } from "../../../src/core/inspect/adequacy";
import { offChord } from "../../../src/core/geometry/offChord";
import { smoothEnd } from "../../../src/core/inspect/smoothCurve";
import { trueEnd } from "../../../src/core/inspect/trueEnd";
import { splineValue } from "../../../src/core/numeric/spline";
import { angleBetween } from "../../../src/core/numeric/angle";
import type { Piece } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut, type Cut, type PipeDescription } from "../../support/pipeJob";

const TOLERANCE = { tolerance: 0.5 };
const piece = (cut: Cut, pipe: Partial<PipeDescription> = {}): Piece => developedPipe(pipeJob({ diameter: 100, length: 600, cuts: [cut], ...pipe }));
const report = (cut: Cut, pipe: Partial<PipeDescription> = {}, options = TOLERANCE): Adequacy => adequacy(piece(cut, pipe), "top", options);

const mitre = planeCut({ angle: 45, height: 150, direction: 20 });
const tall = planeCut({ angle: 75, height: 300, direction: 20 });
const ogee = shapedCut({ shape: "ogee", low: 60, high: 160, rising: "right", radius: 50 });
const hollow = shapedCut({ shape: "hollow", radius: 55, centre: 0, height: 100 });
const vee = shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 });

/** Greatest distance of the true edge's points from 4000 chords of each stretch of the smooth curve, laid over the girth three times. */
function bruteDeviation(one: Piece): number {
  const { girth, stretches } = smoothEnd(one, one.stations, "top");
  const chains = stretches.flatMap((spline) => {
    const [from, to] = [spline.at[0]!, spline.at.at(-1)!];
    const places = Array.from({ length: 4001 }, (_, i) => from + ((to - from) * i) / 4000);
    return [-girth, 0, girth].map((turn) => places.map((x) => ({ x: x + turn, y: splineValue(spline, x).value })));
  });
  let most = 0;
  for (const point of trueEnd(one, "top")) {
    let least = Infinity;
    for (const chain of chains) {
      for (let i = 1; i < chain.length; i++) {
        if (Math.abs(chain[i]!.x - point.x) < least + 1) least = Math.min(least, offChord(point, chain[i - 1]!, chain[i]!));
      }
    }
    most = Math.max(most, least);
  }
  return most;
}

describe("adequacy", () => {
  const cases: readonly (readonly [string, Cut, Partial<PipeDescription>])[] = [
    ["a mitre with 8 stations", mitre, { stations: 8 }],
    ["a steep mitre with 12 stations, inside up", tall, { face: "inside" }],
    ["a hollow with 12 stations", hollow, {}],
    ["a hollow with the seam at 7°", hollow, { seam: { at: "angle", angle: 7 } }],
    ["an ogee with 16 stations", ogee, { stations: 16, seam: { at: "left" } }],
    ["a vee with no station on its corner", vee, { seam: { at: "angle", angle: 7 } }],
    ["a steep vee with no station on its corner", shapedCut({ shape: "vee", angle: 60, centre: 0, height: 80 }), { seam: { at: "angle", angle: 37 } }],
    ["a step between two of 32 stations", shapedCut({ shape: "step", low: 60, high: 160, rising: "right", position: 10 }), { stations: 32 }],
  ];
  for (const [name, cut, pipe] of cases) {
    it(`of ${name} deviates as far as a dense search finds`, () => {
      const one = piece(cut, pipe);
      expectClose(adequacy(one, "top", TOLERANCE).deviation, bruteDeviation(one), 1e-3);
    });
  }
  it("of a square end deviates nowhere", () => expect(report(planeCut({ height: 150 })).deviation).toBeLessThan(1e-12));
  // A cut so steep that it leaves only a tongue of 23°, between the stations 0 and 1.
  it("of an end that no two stations side by side meet is beyond every length", () => {
    const { deviation, smooth, oneExtra } = report(planeCut({ angle: 86, height: -700, direction: 15 }));
    expect(smooth).toEqual([]);
    expect(deviation).toBe(Infinity);
    expect(oneExtra).toBeNull();
  });
  it("of a smooth end deviates less with every customary count", () => {
    const deviations = CUSTOMARY_COUNTS.map((stations) => report(tall, { stations }).deviation);
    for (let i = 1; i < deviations.length; i++) expect(deviations[i]!).toBeLessThan(deviations[i - 1]!);
  });
  it("of an ogee of the pipe's own radius with 24 stations strays by more than 1 mm", () => {
    expect(report(ogee, { stations: 24 }).deviation).toBeGreaterThan(1);
  });
  it("names a place on the true edge", () => {
    const { at } = report(mitre, { stations: 8 });
    expectClose(at.z, 150 + 50 * Math.cos(at.theta - (20 * Math.PI) / 180), 1e-9);
  });
  it("names the place in girth and direction alike", () => {
    const one = piece(hollow, { face: "inside", seam: { at: "left" } });
    const { at } = adequacy(one, "top", TOLERANCE);
    expectClose(angleBetween(one.pattern.seam - at.girth / 50, at.theta), 0, 1e-9);
  });
  it("deviates in its worst span as far as in all", () => {
    const { deviation, perSpan } = report(hollow);
    expectClose(Math.max(...perSpan.map((span) => span.deviation)), deviation, 1e-9);
  });
  it("has one span between every two stations", () => {
    const one = piece(hollow, { extra: [10, 200] });
    expect(adequacy(one, "top", TOLERANCE).perSpan.map(({ to }) => to)).toEqual(one.stations.slice(1).map(({ girth }) => girth));
  });
  it("of a vee follows the edge where the corners have stations", () => {
    expect(report(vee, { stations: 24 }).deviation).toBeLessThan(report(vee, { stations: 24, seam: { at: "angle", angle: 7 } }).deviation / 4);
  });
  it("is the same inside up and outside up", () => {
    for (const cut of [mitre, hollow, ogee]) {
      expectClose(report(cut, { face: "inside" }).deviation, report(cut, { face: "outside" }).deviation, 1e-6);
    }
  });
  it("of the bottom end is that of the top end turned over", () => {
    const bottom = piece(planeCut({ angle: 45, height: 150, direction: 200, end: "bottom" }), { stations: 8 });
    expectClose(adequacy(bottom, "bottom", TOLERANCE).deviation, report(mitre, { stations: 8 }).deviation, 1e-9);
  });
  it("leaves openings aside", () => {
    const opened = developedPipe(pipeJob({ diameter: 100, length: 300, cuts: [mitre, openingCut({ shape: "round", diameter: 40 }, { height: 50 })] }));
    expectClose(adequacy(opened, "top", TOLERANCE).deviation, report(mitre).deviation, 1e-4);
  });
  it("refuses a tolerance that is not above zero", () => {
    for (const tolerance of [0, -1, NaN]) expect(() => report(mitre, {}, { tolerance })).toThrow(RangeError);
  });
});

describe("the girth lost by chords", () => {
  // DIS-01 and DIS-02, derived: n chords of a circle are n sin(π / n) / π of its length.
  for (const [stations, factor] of [[12, 0.98861593], [16, 0.99358685], [24, 0.99714666], [32, 0.99839439], [48, 0.99928621]] as const) {
    it(`with ${stations} stations leaves ${factor}`, () => expectClose(1 - report(mitre, { stations }).chordLossRatio, factor, 1e-8));
  }
  it("on 100 mm diameter with 12 stations is 3.5764 mm", () => expectClose(report(mitre).chordLoss, 3.5764, 1e-4));
  it("does not count added stations", () => expect(report(mitre, { extra: [5, 7] }).chordLoss).toBe(report(mitre).chordLoss));
});

describe("enough stations", () => {
  it("stay under the tolerance", () => {
    const { enough } = report(tall);
    expect(report(tall, { stations: enough! }).deviation).toBeLessThanOrEqual(0.5);
  });
  it("are the fewest customary ones that do", () => {
    const { enough } = report(tall);
    const fewer = CUSTOMARY_COUNTS.filter((count) => count < enough!);
    for (const stations of fewer) expect(report(tall, { stations }).deviation).toBeGreaterThan(0.5);
  });
  it("do not depend on how many there are now", () => {
    for (const stations of [8, 24, 90]) expect(report(tall, { stations }).enough).toBe(report(tall).enough);
  });
  it("of an end no count does justice to are null", () => {
    expect(report(vee, { seam: { at: "angle", angle: 0.37 } }, { tolerance: 1e-4 }).enough).toBeNull();
  });
});

describe("one extra station", () => {
  // Two corners, neither on an even station; the one at the back has a station of its own.
  const leaning = shapedCut({ shape: "vee", angle: 60, centre: 8, height: 100 });
  const back = 180 - (Math.asin(8 / 50) * 180) / Math.PI;
  it("is not asked for where the stations will do", () => expect(report(planeCut({ height: 150 })).oneExtra).toBeNull());
  it("deviates as stated once it is added", () => {
    const before = report(leaning, { extra: [back] });
    const after = report(leaning, { extra: [back, (before.oneExtra!.theta * 180) / Math.PI] });
    expectClose(after.deviation, before.oneExtra!.deviation, 1e-6);
  });
  it("helps", () => {
    const { deviation, oneExtra } = report(leaning, { extra: [back] });
    expect(oneExtra!.deviation).toBeLessThan(deviation);
  });
});
