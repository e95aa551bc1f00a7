import { describe, expect, it } from "vitest";
import { flattenSegments, type Mark } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { randomShop } from "../../support/randomShop";
import { planeCut } from "../../support/pipeJob";
import { shopPiece, slope } from "./pieces";

const of = <K extends Mark["kind"]>(marks: readonly Mark[], kind: K) => marks.filter((mark) => mark.kind === kind) as Extract<Mark, { kind: K }>[];

describe("arrowMarks", () => {
  it("arrowMarks point to the top beside the longest element, off its quarter line", () => {
    const [{ line }] = of(shopPiece({}, [slope]).marks, "top") as [Extract<Mark, { kind: "top" }>];
    const away = Math.abs(line.from.x - 50 * Math.PI);
    expect(away).toBeGreaterThan(100 * Math.PI / 60);
    expect(away).toBeLessThan(100 * Math.PI / 12);
    expect(line.to.y).toBeGreaterThan(line.from.y);
  });
  it("arrowMarks lie on the sheet, over no opening, the one under the foot of the other, on random jobs", () => {
    for (const { name, fabrication } of randomShop(0, 25)) {
      for (const { marks, contours } of fabrication.pieces) {
        const sheet = contours.map(({ segments }) => flattenSegments(segments, 0.05));
        const arrows = marks.flatMap((mark) => (mark.kind === "top" || mark.kind === "rolling" ? [mark.line] : []));
        for (const { from, to } of arrows) {
          for (const u of [0, 0.5, 1]) {
            const place = { x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) };
            const crossed = sheet.flatMap((points) => points.slice(1).filter((b, i) => points[i]!.y > place.y !== b.y > place.y && place.x < points[i]!.x + ((place.y - points[i]!.y) * (b.x - points[i]!.x)) / (b.y - points[i]!.y)));
            expect(crossed.length % 2, `${name} at ${place.x}, ${place.y}`).toBe(1);
          }
        }
      }
    }
  });
  it("arrowMarks of a sheet narrower than a tenth of the girth are smaller, and lie on it", () => {
    // Of a slope of 80° only its highest 10 mm, 27 mm of the girth, are over the base.
    const narrow = shopPiece({}, [planeCut({ angle: 80, direction: 180, at: "high", height: 10 })]);
    const [net] = narrow.net.map(({ segments }) => segments);
    const [left, right] = [Math.min(...net!.map(({ from }) => from.x)), Math.max(...net!.map(({ from }) => from.x))];
    expect(right - left).toBeLessThan(10 * Math.PI);
    const [top, rolling] = [of(narrow.marks, "top"), of(narrow.marks, "rolling")];
    expect([top.length, rolling.length]).toEqual([1, 1]);
    expect(top[0]!.line.to.y - top[0]!.line.from.y).toBeGreaterThan(0.5);
    expect(Math.min(rolling[0]!.line.from.x - left, right - rolling[0]!.line.to.x)).toBeGreaterThan(0);
  });
  it("arrowMarks keep out of a wide root gap", () => {
    const { line } = of(shopPiece({ seam: { kind: "butt", gap: 150 } }).marks, "rolling")[0]!;
    expect(line.from.x).toBeGreaterThanOrEqual(75);
    expect(line.to.x).toBeLessThanOrEqual(100 * Math.PI - 75);
  });
  it("arrowMarks of a template have no rolling direction", () => {
    expect(of(shopPiece().marks, "rolling")).toHaveLength(1);
    expect(of(shopPiece({ purpose: "wrap" }).marks, "rolling")).toEqual([]);
  });
});

describe("seamMatchMarks", () => {
  it("seamMatchMarks stand at one height on both edges, not in the middle", () => {
    const [start, end] = of(shopPiece().marks, "match").filter(({ id }) => id === "seam");
    expectClose(start!.at.y, 200 / 3, 1e-9);
    expectClose(end!.at.y, 200 / 3, 1e-9);
    expectClose(end!.at.x - start!.at.x, 100 * Math.PI, 1e-9);
  });
});
