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
  const grid = new Map<string, Piece[]>();
  for (const piece of pieces) {
    for (const key of cellsOf(piece, cell)) {
      const others = grid.get(key) ?? [];
      for (const other of others) {
        if (crosses(piece, other, slack)) return { at: piece.a, loops: [other.loop, piece.loop] };
      }
      others.push(piece);
      grid.set(key, others);
    }
  }
  return null;
}

function gridSize(pieces: readonly Piece[]): number {
  const total = pieces.reduce((sum, { a, b }) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
  return Math.max(total / Math.max(1, pieces.length), 1e-9) * 3;
}

function* cellsOf({ a, b }: Piece, cell: number): Generator<string> {
  const [left, right] = [Math.floor(Math.min(a.x, b.x) / cell), Math.floor(Math.max(a.x, b.x) / cell)];
  const slope = (b.y - a.y) / (b.x - a.x);
  for (let column = left; column <= right; column += 1) {
    const heightAt = (x: number): number => (left === right ? NaN : a.y + slope * (Math.min(Math.max(x, Math.min(a.x, b.x)), Math.max(a.x, b.x)) - a.x));
    const ends = left === right ? [a.y, b.y] : [heightAt(column * cell), heightAt((column + 1) * cell)];
    const [low, high] = [Math.floor(Math.min(...ends) / cell - 1e-9), Math.floor(Math.max(...ends) / cell + 1e-9)];
    for (let row = low; row <= high; row += 1) yield `${column},${row}`;
  }
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
