import { describe, expect, it } from "vitest";
import { developJob } from "../../../src/core/index";
import { boundsOf } from "../../../src/drawing/bounds";
import { miniature } from "../../../src/drawing/miniature/miniature";
import { pipeJob } from "../../support/pipeJob";

describe("miniature", () => {
  const job = pipeJob({ diameter: 100, length: 150, stations: 12 });
  const outcome = developJob(job);
  if (!outcome.ok) throw new Error("no piece");
  const { development } = outcome;

  it("fills its window in one direction and stays inside in the other", () => {
    const lines = miniature(development, { view: "front", marks: [] }, 60, 44).filter((item) => "pen" in item && item.pen !== "centre line");
    const { left, right, bottom, top } = boundsOf(lines);
    expect(top - bottom).toBeCloseTo(40, 5);
    expect((right - left) / (top - bottom)).toBeCloseTo(100 / 150, 5);
    expect((left + right) / 2).toBeCloseTo(30, 5);
  });

  it("draws a size beside what it measures, its two heads on its ends", () => {
    const items = miniature(development, { view: "front", marks: [{ kind: "size", from: { x: -50, y: 0 }, to: { x: -50, y: 150 }, beside: 20 }] }, 60, 44);
    const heads = items.flatMap((item) => (item.kind === "arrowhead" ? [item.tip] : []));
    expect(heads).toHaveLength(2);
    expect(Math.abs((heads[1]?.y ?? 0) - (heads[0]?.y ?? 0))).toBeCloseTo(40, 5);
    expect(heads[0]?.x).toBeCloseTo(heads[1]?.x ?? NaN, 9);
  });

  it("refuses a window without room", () => {
    expect(() => miniature(development, { view: "front", marks: [] }, 4, 4)).toThrow(RangeError);
  });
});
