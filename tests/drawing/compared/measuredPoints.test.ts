import { expect, it } from "vitest";
import { verdict, type Readings } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { measuredPoints } from "../../../src/drawing/compared/measuredPoints";
import { fromSheet } from "../../../src/drawing/place";
import { expectClose } from "../../support/approximate";
import { developed } from "../../support/developed";
import { pipeJob, planeCut } from "../../support/pipeJob";

const job = pipeJob({ diameter: 100, length: 200, cuts: [planeCut({ angle: 45, height: 80 })], seam: { at: "shortest" } });
const development = developed(job);
const [piece] = development.pieces;
if (!piece) throw new Error("no piece");
const drawn = board(development, { width: 400, height: 220 });
const readings: Readings = {
  scale: 0.5, count: 12, start: piece.pattern.seam, towards: piece.pattern.towards,
  values: [{ line: "stretchOut", value: 157 }, { line: "top", at: 3, value: 40.4 }, { line: "top", at: 12, value: 18 }],
};
const { judged } = verdict(job, readings, { tolerance: 1, angle: 1, girth: "exact" });
const rings = (times: number) => measuredPoints(drawn, piece, readings, judged, { times }).flatMap((item) => (item.kind === "circle" ? [{ pen: item.pen, ...fromSheet(drawn.blocks.pattern.place, item.centre) }] : []));

it("rings stand where each ordinate was read, at the size of the piece", () => {
  const [third, last] = rings(1);
  expectClose(third!.x, (100 * Math.PI) / 4, 1e-9);
  expectClose(third!.y, 80.8, 1e-9);
  expectClose(last!.x, 100 * Math.PI, 1e-9);
  expectClose(last!.y, 36, 1e-9);
  expect([third!.pen, last!.pen]).toEqual(["true length", "station in hand"]);
});

it("errors can be drawn larger, away from the true place", () => {
  // 80 - 50 = 30 is the true height at the seam; 6 mm too much, ten times: 90.
  expectClose(rings(10)[1]!.y, 90, 1e-9);
});

it("a line leads from the true place to those outside the tolerance only", () => {
  const lines = measuredPoints(drawn, piece, readings, judged).filter(({ kind }) => kind === "path");
  expect(lines).toHaveLength(1);
});
