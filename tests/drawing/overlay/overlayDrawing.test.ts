import { expect, test } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds";
import { boxesOverlap } from "../../../src/drawing/box";
import { textBox } from "../../../src/drawing/lettering";
import { overlayDrawing } from "../../../src/drawing/overlay/overlayDrawing";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const { pieces: [piece] } = developed(pipeJob({
  diameter: 100, length: 200, stations: 12, cuts: [planeCut({ angle: 40, height: 120 }), openingCut({ shape: "round", diameter: 40 }, { height: 50, direction: 180 })],
}));
const drawn = (scale: number, tolerance: number, stepped = false) => overlayDrawing(piece!, { scale, tolerance, stepped });
const paths = (items: ReturnType<typeof drawn>, pen: string) => items.filter((item) => item.kind === "path" && item.pen === pen);

test("an overlay has the true edge of every loop between two lines, as far off on the paper as is allowed at any scale", () => {
  for (const scale of [1, 0.5, 2]) {
    const items = drawn(scale, 1.5);
    expect(paths(items, "true edge")).toHaveLength(2);
    expect(paths(items, "tolerance line")).toHaveLength(4);
    const [edge, outside, inside] = [paths(items, "true edge")[0]!, ...paths(items, "tolerance line")].map((item) => boundsOf([item]));
    expect(edge!.right - edge!.left).toBeCloseTo(scale * Math.PI * 100, 9);
    expect(outside!.right - edge!.right).toBeCloseTo(1.5, 6);
    expect(edge!.top - inside!.top).toBeCloseTo(1.5, 1);
  }
});

test("with spaces stepped off in chords the overlay is as long as twelve chords (DIS-01: 0.9886 of the girth)", () => {
  const { left, right } = boundsOf(paths(drawn(1, 1, true), "true edge").slice(0, 1));
  expect((right - left) / (Math.PI * 100)).toBeCloseTo(12 * Math.sin(Math.PI / 12) / Math.PI, 9);
});

test("the numbers stand clear of the lines, base line and elements are there", () => {
  const items = drawn(1, 1);
  const numbers = items.filter((item) => item.kind === "text");
  expect(numbers.map(({ text }) => text).filter((text) => text === "0")).toHaveLength(4);
  expect(paths(items, "station").length).toBeGreaterThanOrEqual(11);
  expect(paths(items, "stretch-out")).toHaveLength(1);
  const edges = paths(items, "tolerance line").flatMap((item) => (item.kind === "path" ? item.segments : []));
  const boxes = edges.map(({ from, to }) => ({ left: Math.min(from.x, to.x), right: Math.max(from.x, to.x), bottom: Math.min(from.y, to.y), top: Math.max(from.y, to.y) }));
  expect(numbers.filter((number) => boxes.some((box) => boxesOverlap(textBox(number), box))).map(({ text }) => text)).toEqual([]);
});
