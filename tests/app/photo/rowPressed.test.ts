import { expect, test } from "vitest";
import { rowPressed } from "../../../src/app/photo/rowPressed";

const rows = Array.from({ length: 13 }, (_, at) => ({ label: String(at % 12), at, station: at }));
const space = 26;

test("rowPressed is the station whose turn it is when the press is near its element", () => {
  expect(rowPressed(rows, 4, 4 * space + 9, space, null)).toBe(4);
  expect(rowPressed(rows, 4, 4 * space - 18, space, null)).toBe(4);
});

test("rowPressed is the nearest station when it is elsewhere", () => {
  expect(rowPressed(rows, 4, 9 * space + 3, space, null)).toBe(9);
  expect(rowPressed(rows, 12, 0, space, null)).toBe(0);
  expect(rowPressed(rows, 0, 400, space, null)).toBe(12);
});

test("rowPressed follows a drawing with thirteen spaces in the room of twelve, station by station", () => {
  const drawn = (space * 12) / 13;
  let pressed: { x: number; at: number } | null = null;
  for (let k = 0; k <= 12; k++) {
    expect(rowPressed(rows, k, k * drawn, space, pressed)).toBe(k);
    pressed = { x: k * drawn, at: k };
  }
  // By its place alone the eleventh element stands nearer to where the tenth should be.
  expect(rowPressed(rows, 0, 11 * drawn, space, null)).toBe(10);
});
