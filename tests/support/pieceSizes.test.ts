import { describe, expect, it } from "vitest";
import { pieceSizes } from "./pieceSizes";

const grid = (kept: (column: number, row: number) => boolean): Uint8Array => Uint8Array.from({ length: 200 }, (_, cell) => (kept(cell % 20, Math.floor(cell / 20)) ? 1 : 0));
const corner = grid((column, row) => (column < 5 && row < 5) || (column >= 5 && column < 10 && row >= 5));

describe("pieceSizes", () => {
  it("joins cells across the seam of the grid", () => expect(pieceSizes(grid((column) => column < 3 || column > 16), 20, false)).toEqual([60]));
  it("keeps two bands apart", () => expect(pieceSizes(grid((_, row) => row < 3 || row > 6), 20, false)).toEqual([60, 60]));
  it("does not join the bottom to the top", () => expect(pieceSizes(grid((_, row) => row === 0 || row === 9), 20, true)).toHaveLength(2));
  it("gives none where nothing is kept", () => expect(pieceSizes(grid(() => false), 20, false)).toEqual([]));
  it("keeps apart what touches at a corner by sides", () => expect(pieceSizes(corner, 20, false)).toEqual([25, 25]));
  it("joins what touches at a corner by corners", () => expect(pieceSizes(corner, 20, true)).toEqual([50]));
});
