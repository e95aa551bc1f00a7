import { describe, expect, it } from "vitest";
import { pathArea, pathLength, type Vec2 } from "../../../src/core/index";
import { cutParts, inOneRow } from "../../../src/drawing/blank/cutParts";
import { patternSvg } from "../../../src/output/svg/patternSvg";
import { shopPipe, slope } from "../../core/fabricate/pieces";
import { expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";
import { randomShop } from "../../support/randomShop";
import { readSvgPath } from "./readSvgPath";

const hole = openingCut({ shape: "round", diameter: 30 }, { direction: 90, height: 60 });
const shop = shopPipe({
  seam: { kind: "lap", width: 8, share: 1 }, edges: { top: { kind: "flange", width: 10, slits: 15 }, bottom: { kind: "none" } }, plates: { top: null, bottom: { fit: "inside", gap: 1 } },
}, [slope, hole]);
const drawn = inOneRow(cutParts(shop));
const file = patternSvg(drawn, "A & B");

const group = (svg: string, id: string) => new RegExp(`<g id="${id}">\n([^]*?)\n</g>`).exec(svg)?.[1] ?? "";
const paths = (svg: string, id: string) => [...group(svg, id).matchAll(/ d="([^"]*)"/g)].map(([, d]) => d!);
const area = (points: readonly Vec2[]) => points.reduce((sum, b, i) => sum + (points.at(i - 1)!.x * b.y - b.x * points.at(i - 1)!.y) / 2, 0);
const length = (points: readonly Vec2[]) => points.reduce((sum, b, i) => sum + Math.hypot(b.x - points.at(i - 1)!.x, b.y - points.at(i - 1)!.y), 0);

describe("patternSvg", () => {
  it("is as large in millimetres as its view box in units", () => {
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(file)!;
    const box = /viewBox="([^"]*)"/.exec(file)![1]!.split(" ").map(Number);
    expect(box.slice(2)).toEqual([Number(width), Number(height)]);
  });
  it("has a group for each layer that is used, cuts first", () => {
    expect([...file.matchAll(/<g id="(\w+)"/g)].map(([, id]) => id)).toEqual(["cut", "slit", "bend", "seam", "quarter", "station", "prick", "mark", "axis", "note"]);
  });
  it("keeps an arc an arc", () => {
    expect(readSvgPath(paths(file, "cut").at(-1)!, 1).commands).toMatch(/^MA+Z$/);
  });
  it("escapes the title", () => {
    expect(file).toContain("<title>A &amp; B</title>");
  });
  it("of nothing is still a file", () => {
    expect(patternSvg([], "")).toMatch(/^<svg [^]*<\/svg>\n$/);
  });
  it("read back gives every contour closed, with the area and perimeter of the one drawn, on random jobs too", () => {
    for (const { name, fabrication } of [{ name: "duct", fabrication: shop }, ...randomShop(0, 10)]) {
      const contours = [...fabrication.pieces.flatMap((piece) => piece.contours), ...fabrication.plates.map(({ contour }) => contour)];
      const read = paths(patternSvg(inOneRow(cutParts(fabrication)), name), "cut").map((d) => readSvgPath(d, 400));
      expect(read.length, name).toBe(contours.length);
      contours.forEach(({ segments }, i) => {
        const { points, isClosed } = read[i]!;
        expect(isClosed, name).toBe(true);
        // Four decimals in the file, curves measured in 400 chords.
        expectClose(area(points), pathArea(segments), 2e-4 * pathLength(segments) + 1e-5 * Math.abs(pathArea(segments)), name);
        expectClose(length(points), pathLength(segments), 1e-3 + 1e-5 * pathLength(segments), name);
      });
    }
  });
});
