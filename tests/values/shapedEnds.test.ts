// Ends cut by a profile swept straight across the pipe, against published numbers. AM = Apostol & Mnatsakanian, "Unwrapping Curves from
// Cylinders and Cones", Amer. Math. Monthly 114 (May 2007) 388-416.
import { describe, it } from "vitest";
import { keptAt, type Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { completeIntegrals } from "../support/elliptic";
import { loopArea } from "../support/loopSampling";
import { pipeJob, shapedCut, type Profile, type Seam } from "../support/pipeJob";

const topAt = (piece: Piece, theta: number): number => keptAt(piece, theta).after.at(-1)!.to;

function topShaped(radius: number, length: number, profile: Profile, seam: Seam = { at: "front" }): Piece {
  return developedPipe(pipeJob({ diameter: 2 * radius, length, seam, cuts: [shapedCut(profile)] }));
}

describe("an end cut by a profile z = p(t)", () => {
  // ARC-01, read: AM Theorem 1, p. 391, and sec. 5: the developed edge is u(x) = p(r sin(x / r)).
  const shapes: readonly (readonly [string, Profile, (t: number) => number])[] = [
    ["a hollow", { shape: "hollow", radius: 90, centre: 10, height: 60 }, (t) => 60 + 90 - Math.sqrt(90 ** 2 - (t - 10) ** 2)],
    ["a nose", { shape: "nose", radius: 70, centre: -5, height: 110 }, (t) => 110 - 70 + Math.sqrt(70 ** 2 - (t + 5) ** 2)],
    ["a vee", { shape: "vee", angle: 90, centre: 12, height: 40 }, (t) => 40 + Math.abs(t - 12)],
    ["a slanting line", { shape: "free", start: { x: -60, z: 50 }, legs: [{ to: { x: 60, z: 110 } }] }, (t) => 80 + t / 2],
    ["two lines", { shape: "free", start: { x: -50, z: 50 }, legs: [{ to: { x: 20, z: 120 } }, { to: { x: 50, z: 100 } }] }, (t) => (t < 20 ? 100 + t : 120 - (t - 20) * (2 / 3))],
  ];
  for (const [name, profile, height] of shapes) {
    it(`with ${name} has the developed edge p(r sin(x/r)), to 1e-9 of the pipe's size`, () => {
      const piece = topShaped(50, 160, profile);
      for (let step = 0; step < 400; step += 1) {
        const theta = 0.007 + (step * 2 * Math.PI) / 400;
        expectClose(topAt(piece, theta), height(50 * Math.sin(theta)), 160e-9, `theta ${theta}`);
      }
    });
  }
});

describe("a fish mouth, the arc having the pipe's own radius", () => {
  // ARC-02, evaluated: AM Ex. 7-8 (z = |cos x| for two perpendicular unit cylinders).
  it("has the developed edge r |cos(x/r)|", () => {
    const piece = topShaped(50, 100, { shape: "nose", radius: 50, centre: 0, height: 60 });
    for (let step = 0; step < 400; step += 1) {
      const theta = 0.007 + (step * 2 * Math.PI) / 400;
      expectClose(topAt(piece, theta) - 10, 50 * Math.abs(Math.cos(theta)), 1e-7);
    }
  });

  // ARC-02, evaluated: the area under that edge is 4 r² (MathWorld "Steinmetz Solid" eq. 7: S = 16 r², four equal faces).
  it("r = 50 as a hollow at the bottom takes away 10000", () => {
    const job = pipeJob({ diameter: 100, length: 200, cuts: [shapedCut({ shape: "hollow", radius: 50, centre: 0, height: 50 }, { end: "bottom" })] });
    expectClose(2 * Math.PI * 50 * 200 - developedPipe(job).trimmed.area, 10000, 1e-6);
  });

  it("r = 50 as a nose at the top leaves 10000 above its shoulders", () => {
    const piece = topShaped(50, 100, { shape: "nose", radius: 50, centre: 0, height: 80 });
    expectClose(piece.trimmed.area - 2 * Math.PI * 50 * 30, 10000, 1e-6);
  });

  it("r = 50 as a hollow at the top leaves 2 pi r (h + r) - 10000", () => {
    const piece = topShaped(50, 200, { shape: "hollow", radius: 50, centre: 0, height: 70 });
    expectClose(piece.trimmed.area, 2 * Math.PI * 50 * 120 - 10000, 1e-6);
  });

  it("r = 50 leaves that area on the flat pattern within 0.005 mm of its edge", () => {
    const piece = topShaped(50, 200, { shape: "hollow", radius: 50, centre: 0, height: 70 });
    expectClose(loopArea(piece.pattern.loops[0]!), 2 * Math.PI * 50 * 120 - 10000, 0.005 * 450);
  });

  // From table 8c's note, evaluated from AM Ex. 8: equal tee r = 50, 16 stations, r |cos|: 50, 46.19398, 35.35534, 19.13417, 0.
  it("r = 50 has the ordinates 50, 46.19398, 35.35534, 19.13417, 0 on 16 stations", () => {
    const profile: Profile = { shape: "nose", radius: 50, centre: 0, height: 60 };
    const piece = developedPipe(pipeJob({ diameter: 100, length: 100, stations: 16, cuts: [shapedCut(profile)] }));
    expectAllClose(piece.stations.slice(0, 5).map((station) => station.top! - 10), [50, 46.19398, 35.35534, 19.13417, 0], 5e-6);
  });
});

describe("an end cut by a quarter circle about an edge line of the pipe", () => {
  // Area constant sqrt2 + ln(1 + sqrt2) = 2.295587149392638 read in OEIS A103710; the area D² times it is derived: 4 r² times the integral of sqrt(1 + u²) over -1..1.
  const quarter = (base: number): Profile => ({
    shape: "free", start: { x: -50, z: 100 + base }, legs: [{ to: { x: 50, z: base }, centre: { x: -50, z: base }, turn: "right" }],
  });

  it("ARC-03: D = 100 has the area 22955.87149 between base plane and edge", () => {
    expectClose(topShaped(50, 120, quarter(0)).trimmed.area, 22955.87149, 1e-4);
  });

  it("ARC-03: D = 100 has that area above a base plane 30 higher", () => {
    expectClose(topShaped(50, 160, quarter(30)).trimmed.area - 2 * Math.PI * 50 * 30, 22955.87149, 1e-4);
  });

  // Table 8e, evaluated from AM Theorem 1: from the tall edge in steps of 30°.
  it("table 8e: has the ordinates 100, 99.7754, 96.8246, 86.6025, 66.1438, 35.9843, 0 from the tall edge", () => {
    const piece = topShaped(50, 120, quarter(0), { at: "longest" });
    expectAllClose(piece.stations.slice(0, 7).map((station) => station.top ?? 0), [100, 99.7754, 96.8246, 86.6025, 66.1438, 35.9843, 0], 5e-5);
  });

  it("table 8e: has the same ordinates above a base plane 30 higher", () => {
    const piece = topShaped(50, 160, quarter(30), { at: "left" });
    expectAllClose(piece.stations.slice(0, 7).map((station) => station.top! - 30), [100, 99.7754, 96.8246, 86.6025, 66.1438, 35.9843, 0], 5e-5);
  });
});

describe("an end cut by a centred arc of radius R >= r", () => {
  // ARC-04, derived from ARC-01: area under z = sqrt(R² - r² sin²) over one turn = 4 r R E((r/R)²); with R = r it is ARC-02.
  for (const [r, area] of [[75, 39554.16324], [50, 29349.24419], [25, 15459.57256]] as const) {
    it(`R = 100, r = ${r} has the area ${area} under it`, () => {
      expectClose(topShaped(r, 130, { shape: "nose", radius: 100, centre: 0, height: 100 }).trimmed.area, area, 1e-5);
    });
  }

  it("has the area 4 r R E((r/R)²) under a nose, to 1e-9", () => {
    for (const ratio of [0.05, 0.3, 0.6, 0.9, 0.99, 0.9999]) {
      const R = 50 / ratio;
      const piece = topShaped(50, R + 10, { shape: "nose", radius: R, centre: 0, height: R });
      const exact = 4 * 50 * R * completeIntegrals(ratio ** 2).second;
      expectClose(piece.trimmed.area, exact, exact * 1e-9, `r/R ${ratio}`);
    }
  });

  it("has the area 2 pi r (h + R) - 4 r R E((r/R)²) under a hollow, to 1e-9", () => {
    for (const ratio of [0.05, 0.3, 0.6, 0.9, 0.99, 0.9999, 1]) {
      const R = 50 / ratio;
      const piece = topShaped(50, R + 100, { shape: "hollow", radius: R, centre: 0, height: 20 });
      const exact = 2 * Math.PI * 50 * (20 + R) - 4 * 50 * R * completeIntegrals(ratio ** 2).second;
      expectClose(piece.trimmed.area, exact, 2 * Math.PI * 50 * (20 + R) * 1e-9, `r/R ${ratio}`);
    }
  });
});
