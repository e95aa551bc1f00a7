import { describe, expect, it } from "vitest";
import { anchorAt, middleOf, windowOn } from "../../../src/drawing/board/anchor";
import { blockAtFull } from "../../../src/drawing/board/blockAtFull";
import { board } from "../../../src/drawing/board/board";
import { onSheet } from "../../../src/drawing/place";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const job = (attitude: "upright" | "lying") => pipeJob({ diameter: 90, length: 200, attitude, cuts: [planeCut({ angle: 30, direction: 180, height: 150 }), openingCut({ shape: "round", diameter: 30 }, { direction: 270, height: 60 })] });
const window = { width: 270, height: 170 };

for (const attitude of ["upright", "lying"] as const) {
  const development = developed(job(attitude));
  const fit = board(development, window);
  const close = board(development, { ...window, at: { scale: 5 * fit.scale, arrangement: fit.arrangement } });

  describe(`a board at a scale of its own, ${attitude}`, () => {
    it("keeps its lettering and its arrangement while the blocks grow", () => {
      expect(close.scale).toBeCloseTo(5 * fit.scale, 12);
      expect(close.arrangement).toBe(fit.arrangement);
      expect(new Set(close.items.flatMap((item) => (item.kind === "text" ? [item.height] : [])))).toEqual(new Set([fit.lettering]));
    });

    it("holds a point of a block at its place of the window", () => {
      const { origin } = fit.blocks.pattern.place;
      const anchor = anchorAt(fit, { x: origin.x + 3, y: origin.y + (attitude === "upright" ? 3 : -3) });
      const at = { x: 0.3, y: 0.6 };
      const shown = windowOn(close, anchor, at, window);
      const held = onSheet(close.blocks[anchor.block].place, anchor.point);
      expect((held.x - shown.left) / window.width).toBeCloseTo(at.x, 9);
      expect((shown.top - held.y) / window.height).toBeCloseTo(at.y, 9);
    });

    it("keeps the middle of the window over the drawing", () => {
      const shown = windowOn(close, { block: "pattern", point: { x: 1e6, y: -1e6 } }, { x: 0.5, y: 0.5 }, window);
      const x = (shown.left + shown.right) / 2, y = (shown.bottom + shown.top) / 2;
      expect(x).toBeGreaterThanOrEqual(close.bounds.left);
      expect(x).toBeLessThanOrEqual(close.bounds.right);
      expect(y).toBeGreaterThanOrEqual(close.bounds.bottom);
      expect(y).toBeLessThanOrEqual(close.bounds.top);
    });
  });

  describe(`blockAtFull, ${attitude}`, () => {
    it("fills the window with each block, and shows it whole about its middle", () => {
      for (const name of ["front", "top", "side", "pattern"] as const) {
        const drawn = blockAtFull(development, window, name, fit);
        const { bounds } = drawn.blocks[name];
        const shown = windowOn(drawn, middleOf(drawn, name), { x: 0.5, y: 0.5 }, window);
        expect(bounds.left).toBeGreaterThanOrEqual(shown.left);
        expect(bounds.right).toBeLessThanOrEqual(shown.right);
        expect(bounds.bottom).toBeGreaterThanOrEqual(shown.bottom);
        expect(bounds.top).toBeLessThanOrEqual(shown.top);
        expect(Math.max((bounds.right - bounds.left) / window.width, (bounds.top - bounds.bottom) / window.height)).toBeGreaterThan(0.85);
      }
    });
  });
}
