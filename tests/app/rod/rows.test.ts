import { expect, test } from "vitest";
import { formatOf } from "../../../src/app/quantity/format";
import { directionOf, rodRows } from "../../../src/app/rod/rows";
import { developed, hole, pipeWith, slant } from "../pipe";

const format = formatOf("mm", { places: 2, denominator: 0, comma: false });
const rowsOf = (...args: Parameters<typeof pipeWith>) => {
  const piece = developed(pipeWith(...args)).pieces[0];
  return Object.fromEntries((piece ? rodRows(piece, format) : []).map((row) => [row.name, row.cells]));
};

test("rodRows gives direction, girth, both ends and length of every station", () => {
  const rows = rowsOf([slant]);
  expect(Object.keys(rows)).toEqual(["From the front", "Stretch-out", "Top", "Bottom", "Element"]);
  expect(rows["Stretch-out"]?.slice(0, 2)).toEqual(["0", "17.67"]);
  expect(rows["Stretch-out"]?.at(-1)).toBe("282.74");
  expect(rows.Top?.[8]).toBe("220");
});

test("rodRows gives the limits of openings where there are any", () => {
  const rows = rowsOf([slant, hole]);
  expect([rows["Opening from"]?.[4], rows["Opening to"]?.[4]]).toEqual(["50", "90"]);
  expect(rows["Opening from"]?.[0]).toBe("—");
});

test("rodRows gives both heights where an edge runs along the element", () => {
  const rows = rowsOf([{ id: "end", on: true, kind: "shaped", end: "top", direction: 0, profile: { shape: "step", low: 140, high: 200, rising: "right", position: 0 } }]);
  expect(new Set(rows.Top)).toEqual(new Set(["140", "200", "140 | 200", "200 | 140"]));
});

test("rodRows names right and left end of a lying pipe", () => {
  expect(Object.keys(rowsOf([slant], { attitude: "lying" }))).toContain("Right end");
});

test("directionOf is 0 and never 360 at the front, rounding noise or not", () => {
  expect(directionOf(2 * Math.PI - 1e-12)).toBe(0);
  expect(directionOf(Math.PI)).toBe(180);
});
