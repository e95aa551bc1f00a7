import { describe, expect, it } from "vitest";
import { adequacy, smoothGap } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { boundsOfItem } from "../../../src/drawing/bounds";
import { boxesOverlap } from "../../../src/drawing/box";
import { clearSpace } from "../../../src/drawing/clearSpace";
import { gapDetail } from "../../../src/drawing/compared/gapDetail";
import { smoothOverlay } from "../../../src/drawing/compared/smoothOverlay";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const cuts = [planeCut({ angle: 55, direction: 180, height: 150 }), openingCut({ shape: "round", diameter: 40 }, { direction: 90, height: 195 })];
const jobs = [pipeJob({ diameter: 90, length: 200, cuts }), pipeJob({ diameter: 90, length: 200, cuts: cuts.slice(0, 1) }), pipeJob({ diameter: 90, length: 200, attitude: "lying", cuts })];

jobs.forEach((job, i) => {
  const development = developed(job);
  const [piece] = development.pieces;
  if (!piece) throw new Error("no piece");
  const found = adequacy(piece, "top", { tolerance: 0.01 });
  const gap = smoothGap(piece, "top", found);
  if (!gap) throw new Error("no gap");

  describe(`gapDetail of job ${i}`, () => {
    const { items, radius, scale } = gapDetail(piece, "top", gap, { figure: found.deviation.toFixed(3), title: (of) => `A ${of}:1` });

    it("shows both lines inside its circle", () => {
      expect(new Set(items.flatMap((item) => (item.kind === "path" ? [item.pen] : [])))).toEqual(new Set(["outline", "smooth curve", "dimension"]));
      for (const item of items) if (item.kind === "path" && item.pen !== "dimension") for (const { from, to } of item.segments) expect(Math.max(Math.hypot(from.x, from.y), Math.hypot(to.x, to.y))).toBeLessThanOrEqual(radius + 1e-9);
    });

    it("dimensions the gap at the scale it states", () => {
      const tips = items.flatMap((item) => (item.kind === "arrowhead" ? [item.tip] : []));
      expect(tips).toHaveLength(2);
      expect(Math.hypot((tips[0]?.x ?? 0) - (tips[1]?.x ?? 0), (tips[0]?.y ?? 0) - (tips[1]?.y ?? 0)) / scale).toBeCloseTo(found.deviation, 4);
      expect(items.some((item) => item.kind === "text" && item.text === `A ${scale}:1`)).toBe(true);
    });

    it("draws the lines through the two points it measures between", () => {
      for (const [pen, at] of [["outline", gap.edge], ["smooth curve", gap.curve]] as const) {
        const middle = { x: (gap.edge.x + gap.curve.x) / 2, y: (gap.edge.y + gap.curve.y) / 2 };
        const point = { x: scale * (at.x - middle.x), y: scale * (at.y - middle.y) };
        const space = clearSpace(0);
        space.take(items.filter((item) => item.kind === "path" && item.pen === pen));
        expect(space.isFree({ left: point.x - 0.1, right: point.x + 0.1, bottom: point.y - 0.1, top: point.y + 0.1 })).toBe(false);
      }
    });

    it("writes its figures clear of every line", () => {
      const space = clearSpace(0);
      space.take(items.filter(({ kind }) => kind !== "text"));
      for (const item of items) if (item.kind === "text") expect(space.isFree(boundsOfItem(item))).toBe(true);
    });
  });

  describe(`smoothOverlay of job ${i}`, () => {
    const drawn = board(development, { width: 320, height: 200 });
    const items = smoothOverlay(drawn, piece, { end: "top", gap, letter: "A" });

    it("lies on the pattern", () => {
      const { bounds } = drawn.blocks.pattern;
      for (const item of items) expect(boxesOverlap(boundsOfItem(item), bounds)).toBe(true);
    });

    it("circles the place and letters it off the figures", () => {
      expect(items.filter(({ kind }) => kind === "circle")).toHaveLength(1);
      const letter = items.find(({ kind }) => kind === "text");
      if (!letter) throw new Error("no letter");
      for (const item of drawn.items) if (item.kind === "text") expect(boxesOverlap(boundsOfItem(letter), boundsOfItem(item))).toBe(false);
    });
  });
});
