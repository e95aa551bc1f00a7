import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import type { Item, PathItem } from "../../../src/drawing/display";
import { onSheet } from "../../../src/drawing/place";
import { stationProjections, stationsApart } from "../../../src/drawing/station/stationProjections";
import { developed } from "../../support/developed";
import { pipeJob, planeCut } from "../../support/pipeJob";

const job = pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 30, direction: 180, height: 150 })] });
const development = developed({ ...job, development: { ...job.development, stations: 12 } });
const [piece] = development.pieces;
if (!piece) throw new Error("no piece");
const drawn = board(development, { width: 400, height: 220 });
const ends = (items: readonly Item[]) => items.filter((item): item is PathItem => item.kind === "path").map(({ segments }) => [segments[0]?.from, segments.at(-1)?.to] as const);

describe("stationProjections", () => {
  const all = stationProjections(drawn, development, stationsApart(drawn, piece));

  it("are all of the projection pen, level or upright", () => {
    expect(new Set(all.flatMap((item) => ("pen" in item ? [item.pen] : [])))).toEqual(new Set(["projection"]));
    for (const [from, to] of ends(all)) expect(Math.min(Math.abs((from?.x ?? 0) - (to?.x ?? 1)), Math.abs((from?.y ?? 0) - (to?.y ?? 1)))).toBeLessThan(1e-6);
  });

  it("reach every ordinate of the pattern from the front view", () => {
    for (const { girth, top } of piece.stations.slice(0, -1)) {
      const wanted = onSheet(drawn.blocks.pattern.place, { x: girth, y: top ?? NaN });
      expect(ends(all).some(([from, to]) => from && to && Math.abs(from.y - wanted.y) < 0.03 && Math.abs(to.y - wanted.y) < 0.03 && to.x >= wanted.x - 1e-6 && from.x < drawn.blocks.front.bounds.right)).toBe(true);
    }
  });

  it("are drawn once where two stations share them", () => {
    const keys = ends(all).map(([from, to]) => [from?.x, from?.y, to?.x, to?.y].map((value) => (value ?? 0).toFixed(2)).join(" "));
    expect(new Set(keys).size).toBe(keys.length);
    // Twelve stations of a pipe cut front to back share seven places across, seven heights and one base line.
    expect(keys).toHaveLength(7 + 7 + 1);
  });

  it("mark each station on the circle", () => {
    expect(all.filter(({ kind }) => kind === "circle")).toHaveLength(12);
  });

  it("give nothing for stations that do not exist", () => {
    expect(stationProjections(drawn, development, [99])).toEqual([]);
  });
});

describe("stationsApart", () => {
  it("leaves out stations whose lines would run into one grey", () => {
    const dense = developed({ ...job, development: { ...job.development, stations: 360 } });
    const [of] = dense.pieces;
    if (!of) throw new Error("no piece");
    expect(stationsApart(board(dense, { width: 270, height: 170 }), of).length).toBeLessThan(200);
    expect(stationsApart(drawn, piece)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  });
});
