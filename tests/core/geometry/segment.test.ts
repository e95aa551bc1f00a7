import { describe, expect, it } from "vitest";
import { type Arc, type Cubic, type Segment, arcSweep, cubicSlope, reverseSegment, segmentArea, segmentLength, segmentPoint } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";
import { segmentLength as chordLength } from "../../support/loopSampling";
import { randomSource, type RandomSource } from "../../support/randomSource";

const { PI } = Math;

function randomArc(source: RandomSource): Arc {
  const centre = { x: source.between(-5, 5), y: source.between(-5, 5) };
  const radius = source.between(0.5, 20);
  const [a, b] = [source.between(0, 2 * PI), source.between(0, 2 * PI)];
  const place = (angle: number) => ({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) });
  return { kind: "arc", from: place(a), to: place(b), centre, anticlockwise: source.chance(0.5) };
}

function randomCubic(source: RandomSource): Cubic {
  const place = () => ({ x: source.between(-10, 10), y: source.between(-10, 10) });
  return { kind: "cubic", from: place(), c1: place(), c2: place(), to: place() };
}

function randomSegment(source: RandomSource): Segment {
  const cubic = randomCubic(source);
  return source.pick<Segment>([cubic, randomArc(source), { kind: "line", from: cubic.from, to: cubic.to }]);
}

function onRandom(count: number, claim: (segment: Segment) => void): void {
  const source = randomSource(20);
  for (let n = 0; n < count; n++) claim(randomSegment(source));
}

/** ½ ∮ (x dy - y dx) by chords on 400 and 800 steps, refined once (Richardson). */
function chordArea(segment: Segment): number {
  const sum = (steps: number): number => {
    let twice = 0;
    for (let i = 0; i < steps; i++) {
      const [a, b] = [segmentPoint(segment, i / steps), segmentPoint(segment, (i + 1) / steps)];
      twice += a.x * b.y - a.y * b.x;
    }
    return twice / 2;
  };
  return sum(800) + (sum(800) - sum(400)) / 3;
}

const quarter: Arc = { kind: "arc", from: { x: 2, y: 0 }, to: { x: 0, y: 2 }, centre: { x: 0, y: 0 }, anticlockwise: true };
const circle: Arc = { ...quarter, to: quarter.from };

describe("arcSweep", () => {
  it("of a quarter circle anticlockwise is π / 2", () => expectClose(arcSweep(quarter).sweep, PI / 2, 1e-15));
  it("of the same ends clockwise is three quarters backwards", () => expectClose(arcSweep({ ...quarter, anticlockwise: false }).sweep, -1.5 * PI, 1e-15));
  it("of an arc that ends where it starts is a whole turn", () => expect(arcSweep(circle).sweep).toBe(2 * PI));
  it("of the same clockwise is a whole turn backwards", () => expect(arcSweep({ ...circle, anticlockwise: false }).sweep).toBe(-2 * PI));
  it("starts at the angle of the first end", () => expectClose(arcSweep(reverseSegment(quarter)).start, PI / 2, 1e-15));
});

describe("segmentPoint", () => {
  it("at 0 and 1 is the very end given", () => onRandom(300, (segment) => {
    expect(segmentPoint(segment, 0)).toBe(segment.from);
    expect(segmentPoint(segment, 1)).toBe(segment.to);
  }));
  it("stays on the circle of an arc", () => {
    const source = randomSource(21);
    for (let n = 0; n < 200; n++) {
      const arc = randomArc(source);
      const { x, y } = segmentPoint(arc, source.unit());
      expectClose(Math.hypot(x - arc.centre.x, y - arc.centre.y), arcSweep(arc).radius, 1e-12);
    }
  });
  it("half way along a quarter circle is on the diagonal", () => expectClose(segmentPoint(quarter, 0.5).x, Math.SQRT2, 1e-15));
  it("half way along a clockwise three quarters lies opposite", () => expectClose(segmentPoint({ ...quarter, anticlockwise: false }, 0.5).x, -Math.SQRT2, 1e-15));
});

describe("cubicSlope", () => {
  it("is the slope the points have", () => {
    const source = randomSource(22);
    for (let n = 0; n < 100; n++) {
      const cubic = randomCubic(source);
      const u = source.between(0.1, 0.9);
      const [a, b] = [segmentPoint(cubic, u - 1e-5), segmentPoint(cubic, u + 1e-5)];
      expectClose(cubicSlope(cubic, u).x, (b.x - a.x) / 2e-5, 1e-7);
      expectClose(cubicSlope(cubic, u).y, (b.y - a.y) / 2e-5, 1e-7);
    }
  });
});

describe("segmentLength", () => {
  it("of a quarter circle of radius 2 is π", () => expectClose(segmentLength(quarter), PI, 1e-15));
  it("of a whole circle is its girth", () => expectClose(segmentLength(circle), 4 * PI, 1e-14));
  it("is that of many chords", () => onRandom(300, (segment) => {
    const length = segmentLength(segment);
    expectClose(chordLength(segment), length, 1e-4 * length);
  }));
  // y = x² from 0 to 1: (2√5 + asinh 2) / 4.
  it("of a parabola is its closed form", () => {
    const parabola: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 1 / 3, y: 0 }, c2: { x: 2 / 3, y: 1 / 3 }, to: { x: 1, y: 1 } };
    expectClose(segmentLength(parabola), (2 * Math.sqrt(5) + Math.asinh(2)) / 4, 1e-9);
  });
  it("of a cubic with a cusp is the sum of its two branches", () => {
    // x = 3u(1-u)(1-2u)·…: the control polygon crosses itself symmetrically; the cusp stands at u = ½, x = 0.5, y = 0.75.
    const cusp: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 1, y: 1 }, c2: { x: 0, y: 1 }, to: { x: 1, y: 0 } };
    expectClose(segmentLength(cusp), chordLength(cusp), 1e-3);
  });
  it("is the same backwards", () => onRandom(100, (segment) => expectClose(segmentLength(reverseSegment(segment)), segmentLength(segment), 1e-7)));
});

describe("segmentArea", () => {
  it("of a quarter circle about the origin is a quarter of the disc", () => expectClose(segmentArea(quarter), PI, 1e-15));
  it("of a whole circle about the origin is the disc", () => expectClose(segmentArea(circle), 4 * PI, 1e-14));
  it("is that of many chords", () => onRandom(200, (segment) => expectClose(segmentArea(segment), chordArea(segment), 1e-5)));
  it("changes sign backwards", () => onRandom(200, (segment) => expectClose(segmentArea(reverseSegment(segment)), -segmentArea(segment), 1e-10)));
});

describe("reverseSegment", () => {
  it("has the same points in the other order", () => onRandom(200, (segment) => {
    for (const u of [0, 0.2, 0.7, 1]) {
      const [a, b] = [segmentPoint(reverseSegment(segment), u), segmentPoint(segment, 1 - u)];
      expectClose(a.x, b.x, 1e-12);
      expectClose(a.y, b.y, 1e-12);
    }
  }));
  it("keeps what else is known of a segment", () => {
    expect(reverseSegment({ kind: "line" as const, from: { x: 0, y: 0 }, to: { x: 1, y: 0 }, owner: "top" }).owner).toBe("top");
  });
});
