import { describe, expect, it } from "vitest";
import { countPieces } from "./pieceCount";

describe("countPieces", () => {
  it("joins cells across the seam of the grid", () => expect(countPieces((column) => column < 3 || column > 16, 20, 10, 2)).toBe(1));
  it("keeps two bands apart", () => expect(countPieces((_, row) => row < 3 || row > 6, 20, 10, 2)).toBe(2));
  it("counts none where nothing is kept", () => expect(countPieces(() => false, 20, 10, 2)).toBe(0));
  it("cannot tell where cells touch only at corners", () => {
    expect(countPieces((column, row) => (column < 5 && row < 5) || (column >= 5 && column < 10 && row >= 5), 20, 10, 2)).toBeNull();
  });
  it("cannot tell where a piece is smaller than asked", () => expect(countPieces((column, row) => column === 3 && row === 3, 20, 10, 2)).toBeNull());
});
