import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { boundsOfItem } from "../../../src/drawing/bounds";
import { boxesOverlap } from "../../../src/drawing/box";
import type { Item, PathItem } from "../../../src/drawing/display";
import { onSheet } from "../../../src/drawing/place";
import { projectionLines } from "../../../src/drawing/station/projectionLines";
import { developed } from "../../support/developed";
import { pipeJob, planeCut } from "../../support/pipeJob";

const development = developed(pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 30, direction: 180, height: 150 })] }));
const drawn = board(development, { width: 400, height: 220 });
const paths = (items: readonly Item[], pen: string) => items.filter((item): item is PathItem => item.kind === "path" && item.pen === pen);
const ends = (path: PathItem | undefined) => [path?.segments[0]?.from, path?.segments.at(-1)?.to];

describe("projectionLines", () => {
  it("carries the ends of the element level into the pattern", () => {
    const piece = development.pieces[0];
    const station = piece?.stations[2];
    if (!piece || !station) throw new Error("no station");
    const level = paths(projectionLines(drawn, development, 2), "projection").map(ends).filter(([from, to]) => Math.abs((from?.y ?? 0) - (to?.y ?? 1)) < 1e-9);
    const wanted = [station.bottom, station.top].map((z) => onSheet(drawn.blocks.pattern.place, { x: station.girth, y: z ?? 0 }));
    expect(level.map(([, to]) => to)).toEqual(wanted);
  });

  it("rises from the circle to the cut in the front view", () => {
    const upright = paths(projectionLines(drawn, development, 2), "projection").map(ends).filter(([from, to]) => Math.abs((from?.x ?? 0) - (to?.x ?? 1)) < 1e-9);
    expect(upright).toHaveLength(1);
  });

  it("draws the true length in the pattern with its figure", () => {
    const items = projectionLines(drawn, development, 3);
    expect(paths(items, "true length")).toHaveLength(1);
    expect(items.filter(({ kind }) => kind === "text").map((item) => (item.kind === "text" ? item.text : ""))).toEqual(["150"]);
  });

  it("writes no length over the word for the seam, upright and lying", () => {
    for (const attitude of ["upright", "lying"] as const) {
      const sloped = developed(pipeJob({ diameter: 90, length: 200, attitude, cuts: [planeCut({ angle: 30, direction: 180, height: 150 })] }));
      const sheet = board(sloped, { width: 400, height: 300 });
      const words = sheet.blocks.pattern.items.filter((item) => item.kind === "text" && item.text === "seam").map(boundsOfItem);
      expect(words).toHaveLength(2);
      for (const index of [0, 1, sloped.pieces[0]!.stations.length - 1]) {
        const [figure] = projectionLines(sheet, sloped, index).filter(({ kind }) => kind === "text");
        for (const word of words) expect(boxesOverlap(word, boundsOfItem(figure!)), `${attitude} ${index}`).toBe(false);
      }
    }
  });

  it("gives an element that is kept in a point only no length", () => {
    const pointed = developed(pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 45, direction: 180, height: 45 })] }));
    const items = (index: number) => projectionLines(board(pointed, { width: 400, height: 220 }), pointed, index).filter((item) => "pen" in item && item.pen === "true length");
    expect(items(0)).toEqual([]);
    expect(items(1)).toHaveLength(2);
  });

  it("gives nothing for a station that does not exist", () => {
    expect(projectionLines(drawn, development, 99)).toEqual([]);
  });
});
