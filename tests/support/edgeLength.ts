import { edgePoint, type Edge, type Owner, type Piece } from "../../src/core/index";

/** Length in space of the piece's edges that `belongs` picks, by `steps` and twice as many chords along each edge (Richardson). mm */
export function edgeLength(piece: Piece, belongs: (owner: Owner) => boolean, steps = 2000): number {
  return piece.trimmed.edges.filter((edge) => belongs(edge.owner)).reduce((sum, edge) => sum + lengthOf(piece, edge, steps), 0);
}

/** Picks the edges made by any cut. */
export function isCut(owner: Owner): boolean {
  return owner.kind === "cut";
}

function lengthOf(piece: Piece, edge: Edge, steps: number): number {
  const [coarse, fine] = [chords(piece, edge, steps), chords(piece, edge, 2 * steps)];
  return fine + (fine - coarse) / 3;
}

function chords(piece: Piece, edge: Edge, steps: number): number {
  let sum = 0;
  let last = inSpace(piece, edge, 0);
  for (let step = 1; step <= steps; step += 1) {
    const next = inSpace(piece, edge, step / steps);
    sum += Math.hypot(next.x - last.x, next.y - last.y, next.z - last.z);
    last = next;
  }
  return sum;
}

function inSpace(piece: Piece, edge: Edge, u: number): { x: number; y: number; z: number } {
  const { theta, z } = edgePoint(piece, edge, u);
  return { x: piece.form.radius * Math.sin(theta), y: -piece.form.radius * Math.cos(theta), z };
}
