import { describe, expect, it } from "vitest";
import { flattenSegments } from "../../../src/core/index";
import { traceCurve } from "../../../src/drawing/view/trace";

describe("traceCurve", () => {
  it("draws a straight stretch as one line, however unevenly it is run through", () => {
    expect(traceCurve((u) => ({ x: 10 * u * u, y: 5 * u * u }), 0.01)).toEqual([{ kind: "line", from: { x: 0, y: 0 }, to: { x: 10, y: 5 } }]);
  });

  it("draws a circular stretch as one arc, the way it is run through", () => {
    const [arc, ...rest] = traceCurve((u) => ({ x: 3 * Math.cos(-2 * u), y: 3 * Math.sin(-2 * u) }), 0.01);
    expect(rest).toEqual([]);
    expect(arc).toMatchObject({ kind: "arc", anticlockwise: false });
    if (arc?.kind === "arc") expect(Math.hypot(arc.centre.x, arc.centre.y)).toBeLessThan(1e-9);
  });

  it("keeps other curves within the tolerance", () => {
    const point = (u: number) => ({ x: 100 * u, y: 40 * Math.sin(3 * u) });
    for (const { x, y } of flattenSegments(traceCurve(point, 0.005), 0.001)) expect(Math.abs(y - point(x / 100).y)).toBeLessThan(0.02);
  });

  it("does not take a line run there and back for a line", () => {
    expect(traceCurve((u) => ({ x: Math.sin(Math.PI * u) * 10 + u, y: 0 }), 0.01).length).toBeGreaterThan(0);
    expect(traceCurve((u) => ({ x: Math.sin(Math.PI * u) * 10 + u, y: 0 }), 0.01)[0]?.kind).not.toBe("line");
  });

  it("draws nothing for a stretch without length", () => {
    expect(traceCurve(() => ({ x: 1, y: 2 }), 0.01)).toEqual([]);
  });
});
