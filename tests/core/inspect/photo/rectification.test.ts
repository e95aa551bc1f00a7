import { eigs, matrix, multiply, transpose } from "mathjs";
import { describe, expect, it } from "vitest";
import { paperPoint, picturePoint, rectification, type MarkedPoint, type Rectification, type Vec2 } from "../../../../src/core/index";
import { expectClose } from "../../../support/approximate";
import { overA3, photographed, type Pinhole } from "../../../support/pinholeCamera";
import { randomSource, type RandomSource } from "../../../support/randomSource";

const [across, up] = [420, 297];
const corners: Vec2[] = [{ x: 0, y: 0 }, { x: across, y: 0 }, { x: across, y: up }, { x: 0, y: up }];
/** Corners, middles of the sides and the middle of an A3 sheet. */
const nine = [0, 0.5, 1].flatMap((v) => [0, 0.5, 1].map((u) => ({ x: u * across, y: v * up })));
const five = [...corners, { x: across / 2, y: 0 }];
const twelve = [...nine, { x: 105, y: 74 }, { x: 315, y: 74 }, { x: 105, y: 223 }];
const everywhere = Array.from({ length: 9 * 7 }, (_, i) => ({ x: ((i % 9) / 8) * across, y: (Math.floor(i / 9) / 6) * up }));

/** Normal noise, by the sum of twelve (elementary). */
const noise = (random: RandomSource, size: number) => size * (Array.from({ length: 12 }, () => random.unit()).reduce((a, b) => a + b, 0) - 6);

function marks(camera: Pinhole, points: readonly Vec2[], size = 0, random = randomSource(1)): MarkedPoint[] {
  return points.map((paper) => {
    const { x, y } = photographed(camera, paper);
    return { paper, picture: { x: x + noise(random, size), y: y + noise(random, size) } };
  });
}

function rectified(points: readonly MarkedPoint[], camera: Pinhole = overA3): Rectification {
  const found = rectification(points, camera, corners);
  if (!found.ok) throw new Error(found.problem.code);
  return found.rectification;
}

/** mm: root mean square and greatest distance between places on the sheet and where their pictures are found. */
function errors(found: Rectification, camera: Pinhole): { mean: number; most: number } {
  const off = everywhere.map((point) => {
    const back = paperPoint(found, photographed(camera, point))!;
    return Math.hypot(back.x - point.x, back.y - point.y);
  });
  return { mean: Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length), most: Math.max(...off) };
}

const code = (points: readonly MarkedPoint[]) => {
  const found = rectification(points, overA3, corners);
  return found.ok ? null : found.problem.code;
};

describe("rectification of a sheet photographed by a known camera", () => {
  it("is exact for four marks without noise, whatever the tilt, side and roll", () => {
    for (const tilt of [0, 15, 40]) {
      for (const azimuth of [0, 70, 200]) {
        const camera = { ...overA3, tilt, azimuth, roll: azimuth / 3, distance: 700 };
        expectClose(errors(rectified(marks(camera, corners)), camera).most, 0, 1e-7);
      }
    }
  });

  it("goes there and back, and leaves no residual at exact marks", () => {
    const camera = { ...overA3, tilt: 30, azimuth: 40 };
    const found = rectified(marks(camera, nine));
    for (const point of everywhere) {
      const place = picturePoint(found, point)!;
      const pictured = photographed(camera, point);
      expectClose(place.x, pictured.x, 1e-4);
      expectClose(place.y, pictured.y, 1e-4);
    }
    expectClose(Math.max(...found.residuals), 0, 1e-6);
  });

  it("finds the bend of a lens of another model than its own, from six points on", () => {
    for (const [k1, k2] of [[-0.08, 0.02], [0.05, 0], [-0.04, 0.01]] as const) {
      for (const tilt of [0, 40]) {
        const camera = { ...overA3, tilt, azimuth: 25, k1, k2, distance: 650 };
        const bent = errors(rectified(marks(camera, nine)), camera);
        expect(bent.most).toBeLessThan(0.3);
        // Without the lens the same picture is several times further off.
        const found = rectified(marks(camera, corners));
        expect(found.lens).toBeNull();
        expect(errors(found, camera).most).toBeGreaterThan(4 * bent.most);
      }
    }
  });

  it("does not look for the bend with five points", () => {
    expect(rectified(marks(overA3, five)).lens).toBeNull();
    expect(rectified(marks(overA3, twelve.slice(0, 6).concat(twelve.slice(7, 9)))).lens).not.toBeNull();
  });

  it("is right to 0.3 mm on A3 at 0.6 m with marks half a pixel off, and with a pixel off at twelve points", () => {
    for (const [points, size] of [[corners, 0.5], [nine, 0.5], [twelve, 1]] as const) {
      let sum = 0;
      const cases = 60;
      for (let n = 0; n < cases; n++) {
        const random = randomSource(100 + n);
        const lens = points === corners ? 0 : random.between(-0.05, 0.05);
        const camera = { ...overA3, tilt: random.between(0, 40), azimuth: random.between(0, 360), roll: random.between(-20, 20), off: { x: random.between(-15, 15), y: random.between(-15, 15) }, k1: lens };
        sum += errors(rectified(marks(camera, points, size, random)), camera).mean ** 2;
      }
      expect(Math.sqrt(sum / cases)).toBeLessThan(0.3);
    }
  });

  it("has no place on the sheet off by more than 0.3 mm in nine pictures of ten with nine marks half a pixel off", () => {
    const worst = Array.from({ length: 100 }, (_, n) => {
      const random = randomSource(700 + n);
      const camera = { ...overA3, tilt: random.between(0, 40), azimuth: random.between(0, 360), k1: random.between(-0.05, 0.05) };
      return errors(rectified(marks(camera, nine, 0.5, random)), camera).most;
    });
    expect(worst.filter((most) => most <= 0.3).length).toBeGreaterThanOrEqual(90);
  });

  it("gives what the direct linear transformation gives when a general mathematics library solves it by eigenvectors", () => {
    // Nine unknowns, the eigenvector of the least eigenvalue of AᵀA (Hartley and Zisserman, algorithm 4.1, from memory), without any refining.
    const camera = { ...overA3, tilt: 25, azimuth: 130, roll: 10 };
    const points = marks(camera, corners, 2);
    const [s, t] = [1 / 200, 1 / 2000];
    const rows = points.flatMap(({ paper, picture }) => {
      const [x, y, u, v] = [s * paper.x - 1, s * paper.y - 1, t * picture.x - 1, t * picture.y - 1];
      return [[0, 0, 0, -x, -y, -1, v * x, v * y, v], [x, y, 1, 0, 0, 0, -u * x, -u * y, -u]];
    });
    const { eigenvectors } = eigs(multiply(transpose(matrix(rows)), matrix(rows)));
    const h = (eigenvectors[0]!.vector as unknown as { toArray(): number[] }).toArray();
    const found = rectified(points);
    for (const point of everywhere) {
      const [x, y] = [s * point.x - 1, s * point.y - 1];
      const w = h[6]! * x + h[7]! * y + h[8]!;
      const place = picturePoint(found, point)!;
      expectClose(place.x, ((h[0]! * x + h[1]! * y + h[2]!) / w + 1) / t, 1e-4);
      expectClose(place.y, ((h[3]! * x + h[4]! * y + h[5]!) / w + 1) / t, 1e-4);
    }
  });

  it("names the mark that is wrong by its residual", () => {
    const points = marks({ ...overA3, tilt: 20 }, nine);
    const slipped = points.map((point, i) => (i === 4 ? { ...point, paper: { x: 240, y: 148.5 } } : point));
    const { residuals } = rectified(slipped);
    expect(residuals.indexOf(Math.max(...residuals))).toBe(4);
    expect(residuals[4]).toBeGreaterThan(15);
  });
});

describe("points that fix no picture are refused", () => {
  const good = marks({ ...overA3, tilt: 20 }, corners);
  const swapped = (i: number, k: number) => good.map((point, n) => ({ ...point, paper: good[n === i ? k : n === k ? i : n]!.paper }));

  it("too few, too many", () => {
    expect(code(good.slice(0, 3))).toBe("points-too-few");
    expect(code([])).toBe("points-too-few");
    expect(code(Array.from({ length: 41 }, (_, i) => ({ paper: { x: i, y: i * i }, picture: { x: 9 * i, y: 9 * i * i } })))).toBe("too-many");
  });

  it("two in one place, with their numbers", () => {
    const found = rectification([...good, { ...good[1]!, paper: { x: 100, y: 100 } }], overA3, corners);
    expect(!found.ok && found.problem).toEqual({ code: "points-coincide", field: "points", detail: { first: 2, second: 5 } });
    expect(code([...good, { ...good[1]!, picture: { x: 9, y: 9 } }])).toBe("points-coincide");
  });

  it("all in line, and all but one", () => {
    const line = [0, 100, 200, 300].map((x) => ({ x, y: 40 + x / 2 }));
    expect(code(marks(overA3, line))).toBe("points-in-line");
    expect(code(marks(overA3, [...line, { x: 50, y: 250 }]))).toBe("points-in-line");
    expect(code(good.map((point, i) => (i === 3 ? { ...point, picture: { x: (good[0]!.picture.x + good[1]!.picture.x) / 2, y: (good[0]!.picture.y + good[1]!.picture.y) / 2 } } : point)))).toBe("points-in-line");
  });

  it("crossed, and reversed", () => {
    expect(code(swapped(0, 1))).toBe("points-crossed");
    expect(code(swapped(0, 2))).toBe("points-crossed");
    const square = [{ x: 100, y: 2000 }, { x: 2000, y: 2000 }, { x: 100, y: 500 }, { x: 2000, y: 500 }];
    expect(code(corners.map((paper, i) => ({ paper, picture: square[i]! })))).toBe("points-crossed");
    expect(code(good.map(({ paper, picture }) => ({ paper, picture: { x: overA3.width - picture.x, y: picture.y } })))).toBe("points-crossed");
  });

  it("so close together that the drawing is not fixed by them", () => {
    const small = corners.map(({ x, y }) => ({ x: x / 60, y: y / 60 }));
    expect(code(marks(overA3, small, 0.3))).toBe("points-unsure");
  });

  it("never with a number that is not finite, whatever is marked", () => {
    const random = randomSource(5);
    let taken = 0;
    for (let n = 0; n < 3000; n++) {
      const place = (most: number) => ({ x: random.whole(0, 4) * most, y: random.whole(0, 4) * most });
      const points = Array.from({ length: random.whole(3, 8) }, () => ({ paper: place(80), picture: place(700) }));
      const found = rectification(points, overA3, corners);
      if (!found.ok) continue;
      taken++;
      const { residuals, unsure, toPaper, toPicture } = found.rectification;
      expect([...residuals, unsure, ...toPaper, ...toPicture].every(Number.isFinite)).toBe(true);
    }
    expect(taken).toBeGreaterThan(15);
  });

  it("a point that is no point is an exception", () => {
    expect(() => rectification([{ paper: { x: NaN, y: 0 }, picture: { x: 0, y: 0 } }], overA3, corners)).toThrow(RangeError);
  });

  it("knows no place beyond the horizon", () => {
    const camera = { ...overA3, tilt: 40, distance: 600 };
    const found = rectified(marks(camera, corners), camera);
    expect(paperPoint(found, { x: 2000, y: -20000 })).toBeNull();
    expect(picturePoint(found, { x: 210, y: -5000 })).toBeNull();
  });
});
