// Where is an edge lowest, where highest?

import { type Edge, type Piece, edgePoint } from "../../core/index";

const SAMPLES = 48;
const ROUNDS = 40;

/** The lowest (sign -1) or highest (sign 1) point of an edge: sampled, then narrowed down, to about 1e-9 of its height. */
export function heightExtreme(piece: Piece, edge: Edge, sign: 1 | -1): { theta: number; z: number } {
  const height = (u: number) => sign * edgePoint(piece, edge, u).z;
  let best = 0;
  for (let i = 1; i <= SAMPLES; i++) if (height(i / SAMPLES) > height(best)) best = i / SAMPLES;
  let low = Math.max(0, best - 1 / SAMPLES), high = Math.min(1, best + 1 / SAMPLES);
  for (let round = 0; round < ROUNDS; round++) {
    const third = (high - low) / 3;
    if (height(low + third) < height(high - third)) low += third;
    else high -= third;
  }
  const narrowed = (low + high) / 2;
  return edgePoint(piece, edge, height(narrowed) > height(best) ? narrowed : best);
}
