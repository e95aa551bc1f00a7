import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { onSheet } from "../../../src/drawing/place";
import { stationAt } from "../../../src/drawing/station/stationAt";
import { sheetAngle, sideways } from "../../../src/drawing/view/views";
import { developed } from "../../support/developed";
import { pipeJob, planeCut } from "../../support/pipeJob";

for (const attitude of ["upright", "lying"] as const) {
  const development = developed(pipeJob({ diameter: 90, length: 100, attitude }));
  const drawn = board(development, { width: 400, height: 300 });
  const piece = development.pieces[0];
  if (!piece) throw new Error("no piece");

  describe(`stationAt on the board of a pipe, ${attitude}`, () => {
    it("finds every station of the pattern at its own element", () => {
      piece.stations.forEach(({ girth }, index) => expect(stationAt(drawn, development, onSheet(drawn.blocks.pattern.place, { x: girth, y: 50 }))).toBe(index));
    });

    it("finds every station round the circle", () => {
      const name = attitude === "upright" ? "top" : "side";
      const view = drawn.views[name];
      const { origin } = drawn.blocks[name].place;
      if (view.kind !== "end-on") throw new Error("not seen end-on");
      piece.stations.slice(0, -1).forEach(({ theta }, index) => {
        const angle = sheetAngle(view, theta);
        expect(stationAt(drawn, development, { x: origin.x + 5 * Math.cos(angle), y: origin.y + 5 * Math.sin(angle) })).toBe(index);
      });
    });

    it("finds the stations of the near wall in the front view", () => {
      const view = drawn.views.front;
      if (view.kind !== "broadside") throw new Error("not seen broadside");
      piece.stations.slice(0, -1).forEach(({ theta }, index) => {
        if (Math.cos(theta) < 0.1) return;
        expect(stationAt(drawn, development, onSheet(drawn.blocks.front.place, { x: sideways(view, 45, theta), y: 50 }))).toBe(index);
      });
    });

    it("finds none off the blocks", () => {
      expect(stationAt(drawn, development, { x: -50, y: -50 })).toBeNull();
    });
  });
}

describe("stationAt on the front view of a pipe cut at a slant, highest at the back", () => {
  const height = 150, tilt = 40, radius = 45;
  const development = developed(pipeJob({ diameter: 90, length: 220, stations: 16, cuts: [planeCut({ height, angle: tilt, direction: 180 })] }));
  const drawn = board(development, { width: 400, height: 300 });
  const { stations } = development.pieces[0] ?? { stations: [] };
  const slope = Math.tan((tilt * Math.PI) / 180);
  /** The station under the point at `theta` of the cut, `off` mm above it. */
  const under = (theta: number, off: number) =>
    stationAt(drawn, development, onSheet(drawn.blocks.front.place, { x: radius * Math.sin(theta), y: height - radius * slope * Math.cos(theta) + off }));

  it("is the far wall's where that is seen beyond the cut, also a little above its edge", () => {
    for (const off of [-2, 2]) expect(stations[under((7 / 8) * Math.PI, off) ?? -1]?.theta).toBeCloseTo((7 / 8) * Math.PI, 9);
  });

  it("is the near wall's below the cut, and a hand's slip above it", () => {
    for (const off of [-2, 0.2]) expect(stations[under(Math.PI / 8, off) ?? -1]?.theta).toBeCloseTo(Math.PI / 8, 9);
  });
});
