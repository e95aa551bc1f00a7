import type { ReadRow } from "../check/places";

// Which station does a press mean? The one whose turn it is, when the press is where its element should be; else the one nearest
// by the spaces from the last press, so that a drawing whose spaces are a little too wide or narrow is followed all the same.

/** Parts of a space from where the element of the turn should be. */
const near = 0.75;

/** The index of the row meant by a press `x` mm along the paper; elements `space` mm apart, as they should be. */
export function rowPressed(rows: readonly ReadRow[], turn: number, x: number, space: number, pressed: { readonly x: number; readonly at: number } | null): number {
  const at = pressed ? pressed.at + (x - pressed.x) / space : x / space;
  const own = rows[turn];
  if (own && Math.abs(own.at - at) <= near) return turn;
  const off = rows.map((row) => Math.abs(row.at - at));
  return off.indexOf(Math.min(...off));
}
