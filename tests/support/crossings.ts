import type { Vec2 } from "../../src/core/index";

export interface Crossing { readonly at: Vec2; readonly loops: readonly [number, number] }

interface Piece { readonly a: Vec2; readonly b: Vec2; readonly loop: number }

/**
 * The first place where closed runs of points cross themselves or each other, or null. A crossing counts where each piece has its ends on both
 * sides of the other by more than `slack` mm, so that touching is not crossing. Pieces are looked up in a square grid; every pair that shares a cell is tried.
 */
export function firstCrossing(runs: readonly (readonly Vec2[])[], slack: number): Crossing | null {
  const pieces = runs.flatMap((run, loop) => run.map((a, index): Piece => ({ a, b: run[(index + 1) % run.length]!, loop })));
  const cell = gridSize(pieces);
  const grid = new Map<number, Piece[]>();
  for (const piece of pieces) {
    for (const key of cellsOf(piece, cell)) {
      const others = grid.get(key);
      if (!others) {
        grid.set(key, [piece]);
        continue;
      }
      for (const other of others) {
        if (crosses(piece, other, slack)) return { at: piece.a, loops: [other.loop, piece.loop] };
      }
      others.push(piece);
    }
  }
  return null;
}

function gridSize(pieces: readonly Piece[]): number {
  const total = pieces.reduce((sum, { a, b }) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
  return Math.max(total / Math.max(1, pieces.length), 1e-9) * 3;
}

/** Numbers of the cells a piece runs through: the row, and 2^26 for each column (of fewer than 2^26 rows and columns no two share a number). */
function cellsOf({ a, b }: Piece, cell: number): number[] {
  const [begin, end] = a.x <= b.x ? [a, b] : [b, a];
  const [left, right] = [Math.floor(begin.x / cell), Math.floor(end.x / cell)];
  const slope = (end.y - begin.y) / (end.x - begin.x);
  const keys: number[] = [];
  for (let column = left; column <= right; column += 1) {
    const from = column === left ? begin.y : begin.y + slope * (column * cell - begin.x);
    const to = column === right ? end.y : begin.y + slope * ((column + 1) * cell - begin.x);
    const [low, high] = [Math.floor(Math.min(from, to) / cell - 1e-9), Math.floor(Math.max(from, to) / cell + 1e-9)];
    for (let row = low; row <= high; row += 1) keys.push(column * 2 ** 26 + row);
  }
  return keys;
}

function crosses(p: Piece, q: Piece, slack: number): boolean {
  return parts(p, q, slack) && parts(q, p, slack);
}

/** True where the ends of `q` lie on opposite sides of the line through `p`, each by more than `slack`. */
function parts(p: Piece, q: Piece, slack: number): boolean {
  const [dx, dy] = [p.b.x - p.a.x, p.b.y - p.a.y];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0) return false;
  const first = (dx * (q.a.y - p.a.y) - dy * (q.a.x - p.a.x)) / length;
  const second = (dx * (q.b.y - p.a.y) - dy * (q.b.x - p.a.x)) / length;
  return (first > slack && second < -slack) || (first < -slack && second > slack);
}
