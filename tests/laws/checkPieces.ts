import type { LawCase } from "../support/lawCase";
import { codesOf } from "../support/lawCase";
import type { KeptElements } from "../support/keptElements";
import { pieceSizes } from "../support/pieceSizes";

/** Counted by flooding a grid of 120 by 75 cells; null where the grid cannot tell, as where pieces hang together by a neck (or touch) narrower than two cells. */
export function slowPieceCount({ elements }: LawCase): number | null {
  const [columns, rows] = [120, 75];
  const cells = keptCells(elements, columns, rows, 1);
  const inner = Uint8Array.from(cells, (_, cell) => {
    const [column, row] = [cell % columns, Math.floor(cell / columns)];
    for (let up = Math.max(0, row - 1); up <= Math.min(rows - 1, row + 1); up += 1) {
      for (let across = -1; across <= 1; across += 1) if (!cells[up * columns + ((column + across + columns) % columns)]) return 0;
    }
    return 1;
  });
  const count = pieceSizes(cells, columns, false).every((size) => size >= 12) ? pieceSizes(cells, columns, true).length : null;
  return count === pieceSizes(inner, columns, false).length ? count : null;
}

/**
 * The number of separate pieces is that of the flooded grid. Where the two differ it must lie between the counts on a far finer grid, of single elements and of bands of
 * 40 elements that must all be kept, with and without crumbs of 10 cells: a piece may be smaller than a cell, touch another at one point only or end in a thin tip.
 */
export function checkPieceCount(one: LawCase): void {
  const slow = slowPieceCount(one);
  const { components } = one.piece.trimmed;
  if (slow === null || slow === components) return;
  const counts = [1, 40].flatMap((elements) => {
    const cells = keptCells(one.elements, 800, 500, elements);
    const sizes = [pieceSizes(cells, 800, false), pieceSizes(cells, 800, true)];
    return sizes.flatMap((list) => [list.length, list.filter((size) => size > 10).length]);
  });
  if (components < Math.min(...counts) || components > Math.max(...counts)) throw new Error(`${components} pieces, ${counts.join(" or ")} by flooding`);
}

/** The cells whose rows are wholly kept on each of so many elements of their column. */
function keptCells(elements: KeptElements, columns: number, rows: number, perColumn: number): Uint8Array {
  const cells = new Uint8Array(columns * rows).fill(1);
  for (let element = 0; element < columns * perColumn; element += 1) {
    const column = Math.floor(element / perColumn);
    let row = 0;
    for (const { from, to } of elements.at(((element + 0.4142) * 2 * Math.PI) / (columns * perColumn))) {
      const [first, last] = [Math.ceil((from / elements.length) * rows - 1e-9), Math.floor((to / elements.length) * rows + 1e-9)];
      for (; row < first; row += 1) cells[row * columns + column] = 0;
      row = Math.max(row, last);
    }
    for (; row < rows; row += 1) cells[row * columns + column] = 0;
  }
  return cells;
}

/** A pipe cut in two is said to be. */
export function checkPiecesSaid(one: LawCase): void {
  const said = codesOf({ ok: true, development: one.development }).includes("separate-pieces");
  if (said !== one.piece.trimmed.components > 1) throw new Error(`${one.piece.trimmed.components} pieces, ${said ? "" : "not "}said`);
}

/** The wall is said to go all the way round where every element keeps something, and not where, on either side of some element, all is gone. */
export function checkClosedRound({ piece, elements }: LawCase): void {
  let open = false;
  for (let step = 0; step < 720 && !open; step += 1) open = elements.lengthAt((step + 0.4142) * (Math.PI / 360)) === 0;
  if (open && piece.trimmed.closedRound) throw new Error("closed all round, but some element is gone");
}
