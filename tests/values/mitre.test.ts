// Pipes cut by one plane, against published numbers. AM = Apostol & Mnatsakanian, "Unwrapping Curves from Cylinders and Cones",
// Amer. Math. Monthly 114 (May 2007) 388-416.
import { describe, expect, it } from "vitest";
import { keptAt, type Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { edgeLength, isCut } from "../support/edgeLength";
import { completeIntegrals } from "../support/elliptic";
import { loopArea, segmentLength } from "../support/loopSampling";
import { pipeJob, planeCut } from "../support/pipeJob";

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Pipe of radius r with its top mitred at b degrees through the axis at `height`, highest in front. */
function mitred(r: number, b: number, height: number, stations = 12): Piece {
  return developedPipe(pipeJob({ diameter: 2 * r, length: height + r * Math.tan((b * Math.PI) / 180) + 10, stations, cuts: [planeCut({ angle: b, height })] }));
}

/** What is left of a wedge: base plane z = 0, height `h` in front, the plane meeting the base `phi` degrees either side of the front. */
function wedge(radius: number, h: number, phi: number): Piece {
  const slope = h / (radius * (1 - Math.cos((phi * Math.PI) / 180)));
  return developedPipe(pipeJob({ diameter: 2 * radius, length: h + 20, cuts: [planeCut({ angle: degrees(Math.atan(slope)), at: "high", height: h })] }));
}

function topAt(piece: Piece, theta: number): number {
  return keptAt(piece, theta).after.at(-1)!.to;
}

describe("a mitred pipe", () => {
  // CYL-01, read: AM sec. 2: the developed edge is u(x) = h sin(x / r) with h = r tan b, x along the girth.
  it("has the developed edge h sin(x/r) of Apostol & Mnatsakanian, at 500 places, to 1e-9", () => {
    const [r, b] = [50, 37];
    const h = r * Math.tan((b * Math.PI) / 180);
    const piece = developedPipe(pipeJob({ diameter: 2 * r, length: 200, cuts: [planeCut({ angle: b, height: 100, direction: 90 })] }));
    for (let x = 0; x < 2 * Math.PI * r; x += (2 * Math.PI * r) / 500) expectClose(topAt(piece, x / r) - 100, h * Math.sin(x / r), 1e-9 * h);
  });

  // CYL-01, read (as above): the period is the girth, 2 pi r.
  it("has a girth of 2 pi r", () => expectClose(mitred(50, 37, 100).pattern.girth, 100 * Math.PI, 1e-12));

  // CYL-02, evaluated: International Correspondence Schools, Building Trades Pocketbook, "Mensuration": truncated cylinder, 3.1416 d times half the sum of heights.
  it("of r = 50 from 100 to 200 high has the lateral area 47123.8898", () => {
    expectClose(truncated(12).trimmed.area, 47123.8898, 1e-3);
  });

  it("of r = 50 from 100 to 200 high has that area on its flat pattern too", () => {
    const [outline] = truncated(12).pattern.loops;
    expectClose(loopArea(outline!), 47123.8898, 0.005 * 400);
  });

  // CYL-02, evaluated, with the trapezium rule: equally spaced stations give the area of a mitre exactly, for any count.
  for (const count of [4, 5, 7, 12, 24]) {
    it(`of r = 50 from 100 to 200 high has the area 47123.8898 by the trapezium rule on its ${count} stations`, () => {
      const piece = truncated(count);
      const lengths = piece.stations.slice(0, -1).map((station) => station.length);
      expect(lengths).toHaveLength(count);
      expectClose((lengths.reduce((a, b) => a + b) * piece.pattern.girth) / count, 47123.8898, 1e-3);
    });
  }

  // CYL-08, read in a second source: NIST DLMF 19.30(i), length of an ellipse; E(0.50) = 1.350643881 from Abramowitz & Stegun Table 17.1 as quoted in GNU Octave's tests.
  it("of r = 1 at 45° has the cut edge 4 sqrt2 E(1/2) = 7.640395578", () => {
    expectClose(edgeLength(mitred(1, 45, 5), isCut), 7.640395578, 1e-8);
  });

  // CYL-09, read in a second source and evaluated: as CYL-08, E(0.25) = 1.467462209. CYL-10 to CYL-13, evaluated: the same formula.
  const edges = [[30, 338.8958806], [60, 484.422411], [22.5, 327.229432], [15, 319.7244457], [11.25, 317.2441004]] as const;
  for (const [b, length] of edges) {
    it(`of r = 50 at ${b}° has the cut edge ${length}`, () => expectClose(edgeLength(mitred(50, b, 100), isCut), length, 1e-6));
    it(`of r = 50 at ${b}° has the cut edge ${length} on its flat pattern`, () => {
      const [outline] = mitred(50, b, 100).pattern.loops;
      const flat = outline!.segments.filter((segment) => isCut(segment.owner)).reduce((sum, segment) => sum + segmentLength(segment), 0);
      expectClose(flat, length, 1e-3);
    });
  }

  // CYL-08 to CYL-13, formula read (DLMF 19.30(i)): 4 a E(sin² b), a = r / cos b; E by the arithmetic-geometric mean.
  it("has the cut edge 4 a E(sin² b) for every whole degree to 85", () => {
    for (let b = 1; b <= 85; b += 4) {
      const angle = (b * Math.PI) / 180;
      const exact = (4 * 50 * completeIntegrals(Math.sin(angle) ** 2).second) / Math.cos(angle);
      expectClose(edgeLength(mitred(50, b, 10), isCut) + edgeBelowBase(b, 10), exact, exact * 1e-8, `${b}°`);
    }
  });

  // CYL-15, read: Marc Rose, Layout Procedures for Metals (Open Oregon, 2019), sleeve example: 6 in deep on a 30° roof, low side 6 in: high side 9.46 in.
  it("6 inches deep on a 30° roof with a low side of 6 inches has a high side of 9.46 inches", () => {
    const job = pipeJob({ diameter: 6 * 25.4, length: 400, cuts: [planeCut({ angle: 30, at: "low", height: 6 * 25.4 })] });
    expectClose(topAt(developedPipe(job), 0) / 25.4, 9.46, 0.005);
  });

  // CYL-16, read: Longfield, Sheet Metal Drafting (1921), sec. 18 p. 32: a circle of 7 in stretches out to 21.9912 in (with pi as 3.1416).
  it("7 inches in diameter stretches out to 21.9912 inches", () => {
    expectClose(developedPipe(pipeJob({ diameter: 7 * 25.4, length: 100 })).pattern.girth / 25.4, 21.9912, 0.0002);
  });

  // CYL-16, read, by the same rule: a girth of 26 in belongs to a diameter of 8.276 in.
  it("8.276 inches in diameter stretches out to 26 inches", () => {
    expectClose(developedPipe(pipeJob({ diameter: 8.276 * 25.4, length: 100 })).pattern.girth / 25.4, 26, 0.002);
  });
});

describe("a pipe cut by a plane through its base", () => {
  // CYL-03, evaluated: cylindrical ungula, side wall A = 2 r h (Wikipedia "Ungula"; MathWorld "Cylindrical Wedge" eq. 14 with a = b = R).
  it("through a base diameter, r = 50 and h = 50, keeps the curved area 5000", () => expectClose(wedge(50, 50, 90).trimmed.area, 5000, 1e-6));

  // CYL-04 to CYL-07, evaluated: MathWorld "Cylindrical Wedge" eq. 15: S = 2 h R (sin phi - phi cos phi) / (1 - cos phi), citing Harris & Stocker 1998 p. 104.
  const areas = [[60, 5478.82605, 1e-4], [90, 8000, 1e-6], [120, 10203.85576, 1e-4], [180, 12566.37061, 1e-4]] as const;
  for (const [phi, area, tolerance] of areas) {
    it(`R = 50, h = 80, half-angle ${phi}° keeps the curved area ${area}`, () => expectClose(wedge(50, 80, phi).trimmed.area, area, tolerance));
    it(`R = 50, h = 80, half-angle ${phi}° keeps that area on its flat pattern within 0.005 mm of its edge`, () => {
      const { loops } = wedge(50, 80, phi).pattern;
      expectClose(loops.reduce((sum, loop) => sum + loopArea(loop), 0), area, 0.005 * 700);
    });
  }
});

describe("the table of mitre ordinates", () => {
  // Table 8a, evaluated from AM sec. 2: drop below the high point of a mitre on unit diameter, (1/2) tan b (1 - cos t).
  const drops: readonly (readonly [number, number, readonly number[]])[] = [
    [11.25, 12, [0, 0.013325, 0.049728, 0.099456, 0.149184, 0.185588, 0.198912]],
    [11.25, 16, [0, 0.007571, 0.02913, 0.061396, 0.099456, 0.137516, 0.169782, 0.191342, 0.198912]],
    [15, 12, [0, 0.017949, 0.066987, 0.133975, 0.200962, 0.25, 0.267949]],
    [15, 16, [0, 0.010198, 0.03924, 0.082705, 0.133975, 0.185244, 0.228709, 0.257751, 0.267949]],
    [22.5, 12, [0, 0.027747, 0.103553, 0.207107, 0.31066, 0.386467, 0.414214]],
    [22.5, 16, [0, 0.015765, 0.06066, 0.12785, 0.207107, 0.286363, 0.353553, 0.398448, 0.414214]],
    [30, 12, [0, 0.038675, 0.144338, 0.288675, 0.433013, 0.538675, 0.57735]],
    [30, 16, [0, 0.021974, 0.084551, 0.178204, 0.288675, 0.399146, 0.492799, 0.555376, 0.57735]],
    [45, 12, [0, 0.066987, 0.25, 0.5, 0.75, 0.933013, 1]],
    [45, 16, [0, 0.03806, 0.146447, 0.308658, 0.5, 0.691342, 0.853553, 0.96194, 1]],
  ];
  for (const [b, count, table] of drops) {
    it(`holds for ${b}° with ${count} stations numbered from the longest element`, () => {
      const [diameter, high] = [100, 150];
      const job = pipeJob({ diameter, length: 200, stations: count, seam: { at: "longest" }, cuts: [planeCut({ angle: b, at: "high", height: high, direction: 70 })] });
      const measured = developedPipe(job).stations.slice(0, count / 2 + 1).map((station) => (high - station.top!) / diameter);
      expectAllClose(measured, table, 6e-7);
    });
  }
});

function truncated(stations: number): Piece {
  return developedPipe(pipeJob({ diameter: 100, length: 250, stations, cuts: [planeCut({ angle: 45, at: "low", height: 100 })] }));
}

/** The part of a mitre's ellipse that runs below the base: derived, by chords along (r sin t, r cos t, height + r tan b cos t). */
function edgeBelowBase(b: number, height: number): number {
  const rise = 50 * Math.tan((b * Math.PI) / 180);
  if (rise <= height) return 0;
  const half = Math.acos(height / rise);
  const chords = (steps: number): number => {
    let sum = 0;
    for (let step = 0; step < steps; step += 1) {
      const [a, c] = [-half + (2 * half * step) / steps, -half + (2 * half * (step + 1)) / steps];
      sum += Math.hypot(2 * 50 * Math.sin((c - a) / 2), rise * (Math.cos(a) - Math.cos(c)));
    }
    return sum;
  };
  const [coarse, fine] = [chords(4000), chords(8000)];
  return fine + (fine - coarse) / 3;
}
