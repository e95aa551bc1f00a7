import type { LawCase } from "../support/lawCase";
import { codesOf } from "../support/lawCase";
import { countPieces } from "../support/pieceCount";

/** Counted by flooding a grid of 360 by 240 cells; null where the grid cannot tell. */
export function slowPieceCount({ elements }: LawCase): number | null {
  const [columns, rows] = [360, 240];
  const cells: boolean[] = [];
  for (let column = 0; column < columns; column += 1) {
    const reaches = elements.at(((column + 0.4142) * 2 * Math.PI) / columns);
    for (let row = 0; row < rows; row += 1) {
      const z = ((row + 0.5) * elements.length) / rows;
      cells[row * columns + column] = reaches.some(({ from, to }) => z > from && z < to);
    }
  }
  return countPieces((column, row) => cells[row * columns + column]!, columns, rows, 60);
}

/** The number of separate pieces is that of the flooded grid. */
export function checkPieceCount(one: LawCase): void {
  const slow = slowPieceCount(one);
  if (slow !== null && slow !== one.piece.trimmed.components) throw new Error(`${one.piece.trimmed.components} pieces, ${slow} by flooding`);
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
