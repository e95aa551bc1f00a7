import { describe, expect, it } from "vitest";
import { markedDrawing } from "../../../src/app/photo/markedDrawing";
import type { Photo } from "../../../src/app/photo/photo";
import { expectClose } from "../../support/approximate";
import { overA3, photographed } from "../../support/pinholeCamera";

const size = { width: 280, height: 200 };
const camera = { ...overA3, tilt: 25, azimuth: 15, middle: { x: 140, y: 100 } };
const corners = [{ x: 0, y: 0 }, { x: 280, y: 0 }, { x: 280, y: 200 }, { x: 0, y: 200 }];
const point = (i: 0 | 1 | 2 | 3, x = "", y = "") => ({ id: `corner-${i}`, corner: i, x, y });
const photo = (rest: Partial<Photo>): Photo => ({
  picture: { name: "a.jpg", url: "blob:a", width: camera.width, height: camera.height }, opening: null, fault: null, by: "rectangle", sheet: "A4",
  points: [point(0), point(1), point(2), point(3)], places: {}, inHand: null, last: null, ...rest,
});
const places = Object.fromEntries(corners.map((corner, i) => [`corner-${i}`, photographed(camera, corner)]));

describe("markedDrawing", () => {
  it("says how many points are wanting", () => {
    expect(markedDrawing(photo({}), "mm", size).found).toEqual({ kind: "wanting", points: 4, base: false });
    expect(markedDrawing(photo({ by: "sheet", places }), "mm", size).found).toEqual({ kind: "wanting", points: 0, base: true });
    expect(markedDrawing(photo({ by: "own", places }), "mm", size).found).toEqual({ kind: "wanting", points: 4, base: true });
  });

  it("takes the corners' own places where nothing is typed, and cannot judge four points", () => {
    const { found, corners: known } = markedDrawing(photo({ places }), "mm", size);
    expect(known).toEqual([...corners, { x: 140, y: 0 }, { x: 140, y: 200 }]);
    if (found.kind !== "found") throw new Error(found.kind);
    expect(found.judged).toBe(false);
    expect(found.length).toBeNull();
    expectClose(found.residuals["corner-2"]!, 0, 1e-6);
  });

  it("takes what is typed in the units of the job, and leaves out a point that cannot be read", () => {
    const odd = photo({ places, points: [point(0), point(1, "11.0236"), point(2, "280 mm"), point(3, "", "six")] });
    const { faults, found } = markedDrawing(odd, "inch", size);
    expect(Object.keys(faults)).toEqual(["corner-3 y"]);
    expect(found).toEqual({ kind: "wanting", points: 1, base: false });
  });

  it("measures the stretch-out on a sheet by its base line", () => {
    // An A4 sheet lies across: 297 × 210. The drawing starts 10 right and 5 up.
    const sheet = [{ x: 0, y: 0 }, { x: 297, y: 0 }, { x: 297, y: 210 }, { x: 0, y: 210 }];
    const marks = { ...Object.fromEntries(sheet.map((corner, i) => [`corner-${i}`, photographed(camera, corner)])), start: photographed(camera, { x: 10, y: 5 }), end: photographed(camera, { x: 289, y: 5 }) };
    const { found } = markedDrawing(photo({ by: "sheet", places: marks }), "mm", size);
    if (found.kind !== "found") throw new Error(found.kind);
    expectClose(found.length!, 279, 1e-6);
  });

  it("names points in one place by their rows", () => {
    const five = photo({ points: [point(0), point(1), point(2), point(3), { id: "own-1", corner: null, x: "90", y: "50" }], places: { ...places, "own-1": places["corner-3"]! } });
    expect(markedDrawing(five, "mm", size).found).toEqual({ kind: "refused", problem: { code: "points-coincide", field: "points", detail: { first: 4, second: 5 } } });
    const without = photo({ points: five.points, places: { "corner-1": places["corner-1"]!, "corner-2": places["corner-2"]!, "corner-3": places["corner-3"]!, "own-1": places["corner-3"]! } });
    expect(markedDrawing(without, "mm", size).found).toMatchObject({ problem: { detail: { first: 4, second: 5 } } });
  });
});
