import { describe, expect, it } from "vitest";
import { flattenSegments, type Mark } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { randomShop } from "../../support/randomShop";
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
        const arrows = marks.flatMap((mark) => (mark.kind === "top" || mark.kind === "rolling" ? [mark.line] : [])).filter(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) > 1e-6);
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
