import type { LawCase } from "../support/lawCase";
import { codesOf } from "../support/lawCase";
import type { KeptElements, Reach } from "../support/keptElements";
import { loopArea } from "../support/loopSampling";
import { pieceSizes } from "../support/pieceSizes";

/** Counted by flooding a grid of 120 by 75 cells; null where the grid cannot tell, as where pieces hang together by a neck (or touch) narrower than two cells. */
export function slowPieceCount({ elements }: LawCase): number | null {
  const [columns, rows] = [120, 75];
  const cells = keptCells(elements, columns, rows, 1, "everywhere");
  if (pieceSizes(cells, columns, false).some((size) => size < 12)) return null;
  const count = pieceSizes(cells, columns, true).length;
  return count === pieceSizes(innerCells(cells, columns), columns, false).length ? count : null;
}

/** The cells of a grid closed round the pipe whose neighbours, by sides and by corners, are all kept. */
function innerCells(cells: Uint8Array, columns: number): Uint8Array {
  const inner = cells.slice();
  for (let cell = 0; cell < cells.length; cell += 1) {
    if (cells[cell]) continue;
    const column = cell % columns;
    for (const next of [column === 0 ? cell + columns - 1 : cell - 1, cell, column === columns - 1 ? cell - columns + 1 : cell + 1]) {
      for (let place = next - columns; place <= next + columns; place += columns) if (place >= 0 && place < inner.length) inner[place] = 0;
    }
  }
  return inner;
}

/**
 * The number of separate pieces is that of the flooded grid. Where the two differ it must lie between the counts on a far finer grid, of cells kept anywhere and of cells kept
 * everywhere, with and without crumbs of 10 cells (a piece may hang by a narrow neck, touch another at one point only or end in a thin tip), but for outlines smaller than 10 such cells.
 */
export function checkPieceCount(one: LawCase): void {
  const slow = slowPieceCount(one);
  const { components } = one.piece.trimmed;
  if (slow === null || slow === components) return;
  const [columns, rows] = [800, 500];
  const counts = [keptCells(one.elements, columns, rows, 8, "anywhere"), keptCells(one.elements, columns, rows, 40, "everywhere")].flatMap((cells) => {
    const sizes = [pieceSizes(cells, columns, false), pieceSizes(cells, columns, true)];
    return sizes.flatMap((list) => [list.length, list.filter((size) => size > 10).length]);
  });
  const cell = (one.piece.pattern.girth / columns) * (one.elements.length / rows);
  const tiny = one.piece.pattern.loops.filter((loop) => loop.kind === "outline" && loopArea(loop) < 10 * cell).length;
  if (components < Math.min(...counts) || components > Math.max(...counts) + tiny) throw new Error(`${components} pieces, ${counts.join(" or ")} by flooding`);
}

/** The cells kept everywhere (or anywhere) over their height on each (or some) of so many elements of their column. */
function keptCells(elements: KeptElements, columns: number, rows: number, perColumn: number, kept: "everywhere" | "anywhere"): Uint8Array {
  const cells = new Uint8Array(columns * rows).fill(kept === "everywhere" ? 1 : 0);
  const [strict, mark] = kept === "everywhere" ? [1e-9, 0] : [-1e-9, 1];
  for (let element = 0; element < columns * perColumn; element += 1) {
    const column = Math.floor(element / perColumn);
    const theta = ((element + 0.4142) * 2 * Math.PI) / (columns * perColumn);
    const reaches = kept === "everywhere" ? gaps(elements.at(theta), elements.length) : elements.at(theta);
    for (const { from, to } of reaches) {
      const [first, last] = [Math.floor((from / elements.length) * rows + strict), Math.ceil((to / elements.length) * rows - strict)];
      for (let row = Math.max(0, first); row < Math.min(rows, last); row += 1) cells[row * columns + column] = mark;
    }
  }
  return cells;
}

/** What lies between and beyond the kept reaches of an element of the whole length. */
function gaps(kept: readonly Reach[], length: number): readonly Reach[] {
  return [...kept, { from: length, to: length }].map(({ from }, index) => ({ from: kept[index - 1]?.to ?? 0, to: from }));
}

/** A pipe cut in two is said to be. */
export function checkPiecesSaid(one: LawCase): void {
  const said = codesOf({ ok: true, development: one.development }).includes("separate-pieces");
  if (said !== one.piece.trimmed.components > 1) throw new Error(`${one.piece.trimmed.components} pieces, ${said ? "" : "not "}said`);
}

/** The wall is said to go all the way round where every element keeps something, and not where, on either side of some element, all is gone. */
export function checkClosedRound({ piece, elements }: LawCase): void {
  if (!piece.trimmed.closedRound) return;
  for (let step = 0; step < 720; step += 1) {
    if (elements.lengthAt((step + 0.4142) * (Math.PI / 360)) === 0) throw new Error("closed all round, but some element is gone");
  }
}
