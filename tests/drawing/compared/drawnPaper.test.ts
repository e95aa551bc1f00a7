import { describe, expect, it } from "vitest";
import { TURN, radians, type Job } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { alongPaper, drawnPaper, onDrawnPaper, underOnPaper } from "../../../src/drawing/compared/drawnPaper";
import { measuredPoints } from "../../../src/drawing/compared/measuredPoints";
import { developed } from "../../support/developed";
import { expectClose } from "../../support/approximate";
import { pipeJob, planeCut } from "../../support/pipeJob";

const cuts = [planeCut({ angle: 40, height: 90, direction: 20 })];
const jobs: Job[] = [
  pipeJob({ diameter: 100, length: 200, cuts, seam: { at: "right" } }),
  pipeJob({ diameter: 80, length: 160, cuts, attitude: "lying", seam: { at: "angle", angle: 30 }, face: "inside" }),
];

const cases = jobs.flatMap((job) => [1, 0.5].flatMap((scale) => ([1, -1] as const).flatMap((towards) => [null, 0, 77].map((start) => ({ job, scale, towards, start })))));

describe("drawnPaper", () => {
  it.each(cases)("lays a drawing at $scale numbered $towards from $start where its ordinates are drawn", ({ job, scale, towards, start }) => {
    const development = developed(job);
    const piece = development.pieces[0]!;
    const drawn = board(development, { width: 300, height: 200 });
    const numbering = { scale, count: 12, start: start === null ? piece.pattern.seam : radians(start), towards };
    const parts = drawnPaper(drawn, piece, numbering);
    expect(parts).toHaveLength(start === null ? 1 : 2);
    for (const at of [0.4, 1.5, 4, 6.25, 11]) {
      const value = 40;
      const reading = { line: "top" as const, at, value };
      // The ring of a reading is drawn by its station's angle.
      const [ring] = measuredPoints(drawn, piece, { ...numbering, values: [reading] }, [{ reading, expected: value, deviation: 0, within: true }]);
      if (ring?.kind !== "circle") throw new Error("no ring");
      const paper = { x: alongPaper(piece, numbering, at), y: value };
      const there = onDrawnPaper(parts, paper);
      expectClose(there.x, ring.centre.x, 1e-9);
      expectClose(there.y, ring.centre.y, 1e-9);
      const back = underOnPaper(parts, there);
      expectClose(back.x, paper.x, 1e-9);
      expectClose(back.y, paper.y, 1e-9);
    }
    expectClose(parts[0]!.from, 0, 0);
    expectClose(parts.at(-1)!.to, piece.form.radius * TURN * scale, 1e-6);
  });
});
