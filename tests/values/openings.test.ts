// Round openings through the wall, against published numbers. AM = Apostol & Mnatsakanian, "Unwrapping Curves from Cylinders and Cones",
// Amer. Math. Monthly 114 (May 2007) 388-416.
import { describe, expect, it } from "vitest";
import { keptAt, type Loop, type Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { edgeLength, isCut } from "../support/edgeLength";
import { completeIntegrals } from "../support/elliptic";
import { loopArea, samplePoints, segmentLength } from "../support/loopSampling";
import { openingCut, pipeJob } from "../support/pipeJob";

const HEIGHT = 200;

/** Pipe of radius R with one round opening of radius a at its back, `offset` to the right as seen from there; seam in front, outside up. */
function holed(R: number, a: number, offset = 0, chordTolerance?: number): Piece {
  const cut = openingCut({ shape: "round", diameter: 2 * a }, { height: HEIGHT, direction: 180, offset });
  return developedPipe(pipeJob({ diameter: 2 * R, length: 2 * HEIGHT, cuts: [cut] }), chordTolerance === undefined ? undefined : { chordTolerance });
}

const fullArea = (R: number): number => 2 * Math.PI * R * 2 * HEIGHT;

function openingLoop(piece: Piece): Loop {
  const loops = piece.pattern.loops.filter((loop) => loop.kind === "opening");
  expect(loops).toHaveLength(1);
  return loops[0]!;
}

/** Half the length of the gap in the element `x` mm along the girth from the opening's own middle element. */
function halfLength(piece: Piece, x: number): number {
  const kept = keptAt(piece, Math.PI + x / piece.form.radius).after;
  return kept.length < 2 ? 0 : (kept[1]!.from - kept[0]!.to) / 2;
}

const extent = (values: readonly number[]): [number, number] => [Math.min(...values), Math.max(...values)];

describe("the opening of an equal tee, r = 50", () => {
  // TEE-03, evaluated from C. Rodriguez, "Two cylinders to worry about" (SUNY Albany, 1996) and AM Ex. 8: one hole of 4 r².
  it("has the developed area 10000, which is not that of a circle", () => {
    expectClose(fullArea(50) - holed(50, 50).trimmed.area, 10000, 1e-4);
  });
  it("has the developed area 10000 as a closed loop of the pattern", () => expectClose(-loopArea(openingLoop(holed(50, 50))), 10000, 0.005 * 400));
  it("is pi r = 157.0796 wide along the girth", () => {
    const [left, right] = extent(samplePoints(openingLoop(holed(50, 50)), 50).map(({ x }) => x));
    expectClose(right - left, 157.0796, 1e-4);
  });
  it("is 2 r = 100 long", () => {
    const [low, high] = extent(samplePoints(openingLoop(holed(50, 50)), 50).map(({ y }) => y));
    expectClose(high - low, 100, 1e-4);
  });
});

describe("a central round opening of radius a through a pipe of radius R", () => {
  // TEE-04, read: AM Ex. 8, p. 397: y² = a² - R² sin²(x/R); the same curve in Math.StackExchange 2942223.
  it("has the flat curve y² = a² - R² sin²(x/R)", () => {
    for (const [R, a] of [[100, 50], [100, 75], [80, 10], [60, 59.9]] as const) {
      const piece = holed(R, a);
      for (let step = -99; step <= 99; step += 1) {
        const x = (step / 100) * R * Math.asin(a / R);
        const square = a ** 2 - (R * Math.sin(x / R)) ** 2;
        expectClose(halfLength(piece, x) ** 2, square, 4e-9 * a ** 2, `R ${R}, a ${a}, x ${x}`);
      }
    }
  });

  // TEE-05, evaluated from TEE-04: half the width is R arcsin(a / R).
  for (const [a, half] of [[50, 52.35987756], [75, 84.8062079], [25, 25.2680255]] as const) {
    it(`R = 100, a = ${a} is ${half} wide to either side`, () => {
      const [left, right] = extent(samplePoints(openingLoop(holed(100, a)), 50).map(({ x }) => x - Math.PI * 100));
      expectAllClose([left, right], [-half, half], 1e-6);
    });
  }

  // TEE-06, derived: 4 R² (E(m) - (1 - m) K(m)), m = (a/R)²; set up as in Adams, Calculus, sec. 15.5 ex. 12 (partly read).
  for (const [a, area] of [[50, 8125.977729], [75, 19296.56316], [25, 1979.206914], [100, 40000]] as const) {
    it(`R = 100, a = ${a} takes away the area ${area}`, () => expectClose(fullArea(100) - holed(100, a).trimmed.area, area, 1e-5));
    it(`R = 100, a = ${a} has the area ${area} as a closed loop, within 0.001 mm of its edge when asked`, () => {
      expectClose(-loopArea(openingLoop(holed(100, a, 0, 1e-3))), area, 1e-3 * 800);
    });
  }
  it("takes away 4 R² (E(m) - (1 - m) K(m)) at every size, to 1e-9 of the pipe's area", () => {
    for (const k of [0.01, 0.1, 0.37, 0.8, 0.99, 0.99999]) {
      const { first, second } = completeIntegrals(k ** 2);
      expectClose(fullArea(100) - holed(100, 100 * k).trimmed.area, 40000 * (second - (1 - k ** 2) * first), fullArea(100) * 1e-9, `a/R ${k}`);
    }
  });

  // TEE-07, derived: the same space curve unrolled with the header or with the branch has one length.
  for (const [a, length] of [[50, 319.7244457], [75, 494.3986881], [100, 764.0395578]] as const) {
    it(`R = 100, a = ${a} has an edge ${length} long`, () => expectClose(edgeLength(holed(100, a), isCut), length, 1e-6));
    it(`R = 100, a = ${a} has an edge ${length} long on the flat pattern`, () => {
      const flat = openingLoop(holed(100, a)).segments.reduce((sum, segment) => sum + segmentLength(segment), 0);
      expectClose(flat, length, 2e-3);
    });
  }

  // Table 8d, evaluated from AM Ex. 8: R = 100, a = 50, half-length y at girth offset x.
  it("R = 100, a = 50 has the half-lengths of table 8d", () => {
    const piece = holed(100, 50);
    expectAllClose([0, 10, 20, 30, 40, 50].map((x) => halfLength(piece, x)), [50, 48.9932, 45.8836, 40.3321, 31.3613, 14.1955], 5e-5);
    expectClose(halfLength(piece, 52.35988), 0, 0.01);
  });

  it("is longest on its own middle element", () => expectClose(halfLength(holed(100, 50), 0), 50, 1e-9));
});

describe("an off-centre round opening, R = 100, a = 30, offset 40", () => {
  // TEE-12, evaluated from AM Ex. 7 (eq. 10 on p. 396; the form y² = a² - (r sin(x/r) - d)² inferred from Theorem 1).
  const fromMiddle = (piece: Piece): [number, number] => extent(samplePoints(openingLoop(piece), 50).map(({ x }) => x - Math.PI * 100));

  it("runs girthwise from 10.01674 to 77.53975 to the right of its direction", () => expectAllClose(fromMiddle(holed(100, 30, 40)), [10.01674, 77.53975], 1e-4));
  it("runs to the left by as much when offset to the left", () => expectAllClose(fromMiddle(holed(100, 30, -40)), [-77.53975, -10.01674], 1e-4));
  it("has its greatest half-length 30 at x = 100 arcsin 0.4", () => expectClose(halfLength(holed(100, 30, 40), 100 * Math.asin(0.4)), 30, 1e-9));
  it("takes away the area 3156.26767", () => expectClose(fullArea(100) - holed(100, 30, 40).trimmed.area, 3156.26767, 1e-4));
  it("has the flat curve y² = a² - (R sin(x/R) - d)²", () => {
    const piece = holed(100, 30, 40);
    for (let x = 11; x < 77; x += 0.5) expectClose(halfLength(piece, x) ** 2, 900 - (100 * Math.sin(x / 100) - 40) ** 2, 4e-6, `x ${x}`);
  });
});
