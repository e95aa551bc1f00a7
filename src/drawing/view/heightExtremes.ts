// Where is an edge lowest, where highest?

import { type Edge, type Piece, edgePoint } from "../../core/index";

const SAMPLES = 48;
const ROUNDS = 25;

interface EdgePlace {
  readonly theta: number;
  readonly z: number;
}

/** The lowest and the highest point of an edge: sampled, then narrowed down, to about 1e-9 of its height. */
export function heightExtremes(piece: Piece, edge: Edge): { low: EdgePlace; high: EdgePlace } {
  const heights = Array.from({ length: SAMPLES + 1 }, (_, i) => edgePoint(piece, edge, i / SAMPLES).z);
  return { low: extreme(piece, edge, heights, -1), high: extreme(piece, edge, heights, 1) };
}

function extreme(piece: Piece, edge: Edge, heights: readonly number[], sign: 1 | -1): EdgePlace {
  const height = (u: number) => sign * edgePoint(piece, edge, u).z;
  const greatest = Math.max(...heights.map((z) => sign * z));
  const best = heights.findIndex((z) => sign * z === greatest) / SAMPLES;
  let low = Math.max(0, best - 1 / SAMPLES), high = Math.min(1, best + 1 / SAMPLES);
  for (let round = 0; round < ROUNDS; round++) {
    const third = (high - low) / 3;
    if (height(low + third) < height(high - third)) low += third;
    else high -= third;
  }
  const narrowed = (low + high) / 2;
  return edgePoint(piece, edge, height(narrowed) > greatest ? narrowed : best);
}
