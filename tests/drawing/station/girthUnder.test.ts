import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { elementPoint } from "../../../src/drawing/station/elementPoint";
import { girthUnder, roundStep } from "../../../src/drawing/station/girthUnder";
import { onSheet } from "../../../src/drawing/place";
import { developed } from "../../support/developed";
import { pipeJob } from "../../support/pipeJob";

describe("girthUnder", () => {
  for (const attitude of ["upright", "lying"] as const) {
    const development = developed(pipeJob({ diameter: 90, length: 200, attitude }));
    const [piece] = development.pieces;
    if (!piece) throw new Error("no piece");
    const drawn = board(development, { width: 400, height: 260 });
    const turnsTo = piece.pattern.towards;

    it(`is read off the pattern to the grain, ${attitude}`, () => {
      const point = onSheet(drawn.blocks.pattern.place, { x: 101.26, y: 50 });
      expect(girthUnder(drawn, piece, point, 0.1 * drawn.scale)).toBeCloseTo(101.3, 9);
      expect(girthUnder(drawn, piece, point, 1e-6)).toBeCloseTo(101.26, 4);
    });

    it(`is read off the circle by its direction, ${attitude}`, () => {
      const circle = attitude === "upright" ? "top" : "side";
      for (const station of piece.stations.slice(1, -1)) {
        expect(girthUnder(drawn, piece, elementPoint(drawn, circle, piece, station.theta, 0), 1e-6)).toBeCloseTo(station.girth, 4);
      }
    });

    it(`is that of the near wall's element in the front view, ${attitude}`, () => {
      const near = piece.stations.slice(1, -1).filter(({ theta }) => Math.cos(theta) > 0.1);
      expect(near.length).toBeGreaterThan(3);
      for (const { theta, girth } of near) {
        expect(girthUnder(drawn, piece, elementPoint(drawn, "front", piece, theta + 0.02, 100), 1e-7) ?? NaN).toBeCloseTo(girth + turnsTo * 0.02 * 45, 3);
      }
    });

    it(`is nothing beside the blocks, ${attitude}`, () => {
      expect(girthUnder(drawn, piece, { x: -50, y: -50 }, 0.1)).toBeNull();
    });
  }
});

describe("roundStep", () => {
  it("is 1, 2 or 5 times a power of ten", () => {
    expect([1, 1.9, 2, 4.9, 5, 9, 10].map(roundStep)).toEqual([1, 1, 2, 2, 5, 5, 10]);
    expect(roundStep(0.3)).toBeCloseTo(0.2, 12);
  });
});
