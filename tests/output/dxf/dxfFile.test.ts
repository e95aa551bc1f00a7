import { describe, expect, it } from "vitest";
import { pathArea, pathLength, type Contour, type Fabrication } from "../../../src/core/index";
import { cutParts, inOneRow } from "../../../src/drawing/blank/cutParts";
import { dxfFile } from "../../../src/output/dxf/dxfFile";
import { shopPipe, slope } from "../../core/fabricate/pieces";
import { expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";
import { randomShop } from "../../support/randomShop";
import { readLoops } from "./readChains";
import { measured, readDxf, type ReadContour } from "./readDxf";

const made = shopPipe({
  quantity: 3, seam: { kind: "grooved", width: 6, share: 0 }, plates: { top: { fit: "mean", gap: 0 }, bottom: { fit: "inside", gap: 1 } },
  edges: { top: { kind: "flange", width: 10, slits: 15 }, bottom: { kind: "wired", wire: 3.2, thickness: true } },
}, [slope, openingCut({ shape: "round", diameter: 30 }, { direction: 90, height: 60 })]);
const drawn = inOneRow(cutParts(made));
const file = dxfFile(drawn, { units: "mm" });
const read = readDxf(file);

const contoursOf = ({ pieces, plates }: Fabrication): readonly Contour[] => [...pieces.flatMap(({ contours }) => contours), ...plates.map(({ contour }) => contour)];
const cutOf = ({ contours }: { contours: readonly ReadContour[] }) => contours.filter(({ layer }) => layer === "CUT");

/** Every contour read back closed, with the area and length of the one drawn: off by at most the tolerance along all of it. */
function expectSame(text: string, contours: readonly Contour[], tolerance: number, scale = 1): void {
  const cut = cutOf(readDxf(text));
  expect(cut.length).toBe(contours.length);
  contours.forEach(({ segments }, i) => {
    expect(cut[i]!.isClosed).toBe(true);
    const { area, length } = measured(cut[i]!);
    expectClose(area / scale ** 2, pathArea(segments), tolerance * pathLength(segments) + 1e-6, "area");
    expectClose(length / scale, pathLength(segments), Math.max(20 * tolerance, 1e-4 * pathLength(segments)), "length");
  });
}

describe("dxfFile", () => {
  it("gives back every contour closed, its area and perimeter", () => expectSame(file, contoursOf(made), 0.005));
  it("keeps to a finer tolerance with more arcs", () => {
    const fine = dxfFile(drawn, { units: "mm", tolerance: 1e-4 });
    expectSame(fine, contoursOf(made), 1e-4);
    expect(cutOf(readDxf(fine))[0]!.corners.length).toBeGreaterThan(1.5 * cutOf(read)[0]!.corners.length);
  });
  it("is in inches when asked, and says so", () => {
    const inches = dxfFile(drawn, { units: "inch" });
    expect([read.units, readDxf(inches).units]).toEqual([4, 1]);
    expectSame(inches, contoursOf(made), 0.005, 1 / 25.4);
  });
  it("lists its layers by plain names and puts cuts, bends, slits and words on their own", () => {
    expect(read.layers).toEqual(["0", "CUT", "SLIT", "BEND", "SEAM", "QUARTER", "STATION", "PRICK", "MARK", "AXIS", "NOTE"]);
    const on = (layer: string) => read.lines.filter((line) => line.layer === layer).length + read.contours.filter((one) => one.layer === layer).length;
    expect(on("SLIT")).toBe(made.pieces[0]!.marks.filter(({ kind }) => kind === "slit").length);
    expect(on("BEND")).toBe(4);
    expect(on("SEAM")).toBe(1);
    expect(cutOf(read)).toHaveLength(4);
  });
  it("lays the parts side by side", () => {
    const [outline, , ellipse, disc] = cutOf(read).map(({ corners }) => corners.map(({ x }) => x));
    expect(Math.min(...ellipse!)).toBeGreaterThan(Math.max(...outline!));
    expect(Math.min(...disc!)).toBeGreaterThan(Math.max(...ellipse!));
  });
  it("holds lines and arcs alone: no spline, no chord in place of a curve", () => {
    expect(new Set(read.kinds)).toEqual(new Set(["LWPOLYLINE", "LINE", "POINT", "TEXT"]));
    const disc = cutOf(read)[3]!;
    expect(disc.corners.every(({ bulge }) => bulge !== 0)).toBe(true);
    expect(disc.corners.length).toBeLessThanOrEqual(4);
  });
  it("with splines keeps every curve as it is: contours that close end to end, to the last digit written", () => {
    const splines = dxfFile(drawn, { units: "mm", curves: "splines" });
    const loops = readLoops(splines, "CUT", 1e-7);
    const contours = contoursOf(made).filter(({ segments }) => segments.some(({ kind }) => kind === "cubic"));
    expect(loops.length).toBe(contours.length);
    // The disc has no other curve than arcs: closed as it was.
    expect(cutOf(readDxf(splines)).map(({ isClosed }) => isClosed)).toEqual([true]);
    loops.forEach((loop, i) => {
      const { segments } = contours[i]!;
      const area = loop.reduce((sum, b, k) => sum + (loop.at(k - 1)!.x * b.y - b.x * loop.at(k - 1)!.y) / 2, 0);
      const length = loop.slice(1).reduce((sum, b, k) => sum + Math.hypot(b.x - loop[k]!.x, b.y - loop[k]!.y), 0);
      expectClose(Math.abs(area), Math.abs(pathArea(segments)), 5e-6 * Math.abs(pathArea(segments)), "area");
      expectClose(length, pathLength(segments), 5e-6 * pathLength(segments), "length");
    });
  });
  it("with splines has lines and arcs where the drawing has them, a spline for each run of curves", () => {
    const { kinds } = readDxf(dxfFile(drawn, { units: "mm", curves: "splines" }));
    const count = (kind: string) => kinds.filter((one) => one === kind).length;
    // Slope, opening and ellipse, the rim of the flange, and its bend line.
    expect(count("SPLINE")).toBe(4);
    expect(count("ARC") + count("LWPOLYLINE")).toBeGreaterThan(0);
  });
  it("writes its words in ASCII, signs of the trade by the format's own codes", () => {
    expect(file).toMatch(/^[\n -~]*$/);
    expect(read.texts).toEqual(expect.arrayContaining(["groove 3 x 6 = 18", "%%c96", "pipe, 3 off, steel 2"]));
  });
  it("refuses a tolerance that is none", () => {
    expect(() => dxfFile(drawn, { units: "mm", tolerance: 0 })).toThrow(RangeError);
  });
  it("of nothing is still a file", () => {
    expect(readDxf(dxfFile([], { units: "mm" })).kinds).toEqual([]);
  });
  it("of random jobs gives back closed contours of the same measures, nothing twice and nothing without length", () => {
    for (const { name, fabrication } of randomShop(0, 12)) {
      const text = dxfFile(inOneRow(cutParts(fabrication)), { units: "mm" });
      try {
        expectSame(text, contoursOf(fabrication), 0.005);
      } catch (error) {
        throw new Error(`${name}: ${String(error)}`, { cause: error });
      }
      const { lines, contours } = readDxf(text);
      for (const { ends } of lines) expect(Math.hypot(ends[0]![0] - ends[1]![0], ends[0]![1] - ends[1]![1]), name).toBeGreaterThan(1e-6);
      for (const { corners } of contours) corners.slice(1).forEach(({ x, y }, i) => expect(Math.hypot(x - corners[i]!.x, y - corners[i]!.y), name).toBeGreaterThan(1e-7));
      const keys = [
        ...lines.map(({ ends }) => ends.map(([x, y]) => `${x.toFixed(5)},${y.toFixed(5)}`).sort().join(" ")),
        ...contours.map(({ corners }) => corners.map(({ x, y }) => `${x.toFixed(5)},${y.toFixed(5)}`).join(" ")),
      ];
      expect(new Set(keys).size, name).toBe(keys.length);
    }
  });
});
