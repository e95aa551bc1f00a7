import { describe, expect, it } from "vitest";
import type { Cutter } from "../../../src/core/cut/cutter";
import { faceHeight } from "../../../src/core/cut/faceHeight";
import { type Face, cornerAngles, facesOf, meetingAngles } from "../../../src/core/cut/meetingAngles";
import { TURN, angleBetween } from "../../../src/core/numeric/angle";
import { bisect } from "../../../src/core/numeric/bisect";
import { randomSource } from "../../support/randomSource";
import { RADIUS, plane, randomCutter, rectangle, round } from "./cutters";

const { PI } = Math;
const SIZE = 200;
const STEPS = 2000;

function reaches({ cutter, face }: Face, theta: number): boolean {
  if (cutter.kind === "plane") return true;
  const t = RADIUS * Math.sin(theta - cutter.direction);
  const reach = cutter.reaches[face]!;
  return t >= reach.from && t <= reach.to;
}

/** Every change of sign of the difference in height on even steps where both faces reach, bisected. */
function sampledMeetings(a: Face, b: Face): number[] {
  const gap = (theta: number): number => faceHeight(a.cutter, a.face, theta) - faceHeight(b.cutter, b.face, theta);
  return Array.from({ length: STEPS }, (_, i) => [(TURN * i) / STEPS, (TURN * (i + 1)) / STEPS] as const).flatMap(([from, to]) => {
    const whole = [from, to].every((theta) => reaches(a, theta) && reaches(b, theta));
    return whole && gap(from) * gap(to) < 0 ? [bisect(gap, from, to)] : [];
  });
}

function onPairs(claim: (a: Face, b: Face, n: number) => void): void {
  const source = randomSource(66);
  for (let n = 0; n < 150; n++) {
    const [one, other]: Cutter[] = [randomCutter(source), randomCutter(source)];
    for (const a of facesOf(one!)) for (const b of facesOf(other!)) claim(a, b, n);
  }
}

const face = (cutter: Cutter, k = 0): Face => facesOf(cutter)[k]!;

describe("facesOf", () => {
  it("of a plane is one between its lowest and highest place", () => {
    const { low, high } = face(plane(100, 0.4));
    expect([low, high]).toEqual([80, 120]);
  });
  it("leaves out what passes beside the pipe", () => expect(facesOf(round(10, 100, 0, 70))).toEqual([]));
  it("holds all heights of each face on the pipe, on random cutters", () => {
    const source = randomSource(67);
    for (let n = 0; n < 200; n++) {
      for (const one of facesOf(randomCutter(source))) {
        const theta = source.between(0, TURN);
        if (!reaches(one, theta)) continue;
        const z = faceHeight(one.cutter, one.face, theta);
        expect(z >= one.low - 1e-9 && z <= one.high + 1e-9).toBe(true);
      }
    }
  });
});

describe("meetingAngles", () => {
  it("of two planes that cross are the two places of one height", () => {
    const angles = meetingAngles(face(plane(100, 1)), face(plane(100)), SIZE);
    for (const place of [PI / 2, 1.5 * PI]) expect(angles.some((angle) => angleBetween(angle, place) < 1e-14)).toBe(true);
  });
  it("of two planes one above the other are none", () => expect(meetingAngles(face(plane(100)), face(plane(120)), SIZE)).toEqual([]));
  it("of a plane that touches an opening's crown is the crown", () => {
    const opening = facesOf(round(30, 100));
    const angles = opening.flatMap((one) => meetingAngles(face(plane(130)), one, SIZE));
    expect(angles.some((angle) => angleBetween(angle, 0) < 1e-7)).toBe(true);
  });
  it("find every meeting that 2000 steps find, within 1e-8, on random pairs of cutters", () => {
    let found = 0;
    onPairs((a, b, n) => {
      const sampled = sampledMeetings(a, b);
      const angles = sampled.length > 0 ? meetingAngles(a, b, SIZE) : [];
      found += sampled.length;
      for (const place of sampled) expect(angles.some((angle) => angleBetween(angle, place) < 1e-8), `pair ${n} at ${place}`).toBe(true);
    });
    expect(found).toBeGreaterThan(200);
  });
  it("are places where the faces have one height, on random pairs of cutters", () => {
    onPairs((a, b) => {
      for (const theta of meetingAngles(a, b, SIZE)) {
        expect(Math.abs(faceHeight(a.cutter, a.face, theta) - faceHeight(b.cutter, b.face, theta))).toBeLessThan(1e-5 * SIZE);
      }
    });
  });
  it("are the same in either order", () => {
    onPairs((a, b) => {
      const [one, other] = [meetingAngles(a, b, SIZE), meetingAngles(b, a, SIZE)];
      for (const theta of one) expect(other.some((angle) => angleBetween(angle, theta) < 1e-6)).toBe(true);
    });
  });
});

describe("cornerAngles", () => {
  it("of a plane are none", () => expect(cornerAngles(plane(100, 1), SIZE)).toEqual([]));
  it("of a rectangle 50 wide are 30° to both sides on both walls", () => {
    const angles = cornerAngles(rectangle(50, 40, 100), SIZE);
    for (const place of [PI / 6, -PI / 6, PI - PI / 6, PI + PI / 6]) expect(angles.some((angle) => angleBetween(angle, place) < 1e-14)).toBe(true);
  });
  it("of an opening through the near wall hold the contour it ends at", () => {
    const angles = cornerAngles(round(50, 100, 0, 20, [0, Infinity]), SIZE);
    expect(angles.some((angle) => angleBetween(angle, PI / 2) < 1e-14)).toBe(true);
  });
  it("of a reach within rounding of the contour are on the contour", () => {
    const angles = cornerAngles(round(50 * (1 + 1e-15), 100), SIZE);
    expect(angles.filter((angle) => angleBetween(angle, PI / 2) === 0)).not.toEqual([]);
  });
  it("of an opening that reaches over one contour element hold that element, not the other", () => {
    const angles = cornerAngles(round(20, 100, 0, -45), SIZE);
    expect([1.5 * PI, PI / 2].map((place) => angles.some((angle) => angleBetween(angle, place) < 1e-14))).toEqual([true, false]);
  });
  it("lie in [0, 2π)", () => {
    const source = randomSource(68);
    for (let n = 0; n < 200; n++) for (const angle of cornerAngles(randomCutter(source), SIZE)) expect(angle >= 0 && angle < TURN).toBe(true);
  });
});
