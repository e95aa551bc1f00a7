// Pieces of line that follow one another, joined: dashes run on and corners are mitred.

import { type Segment, type Vec2, reverseSegment } from "../../core/index";
import { mergeSegments } from "./mergeSegments";

export interface Chain {
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

/** Chains of the given pieces, joined end to end where ends lie within `noise` mm, turned round where need be. */
export function chainsOf(pieces: readonly (readonly Segment[])[], noise: number): Chain[] {
  const waiting = pieces.filter((piece) => piece.length > 0);
  const chains: Chain[] = [];
  for (let piece = waiting.shift(); piece; piece = waiting.shift()) {
    const forward = grow([...piece], waiting, noise);
    const segments = mergeSegments(turned(grow(turned(forward), waiting, noise)), noise);
    const [first] = segments, last = segments.at(-1);
    const closed = first !== undefined && last !== undefined && meet(first.from, last.to, noise) && (segments.length > 1 || first.kind !== "line");
    chains.push({ segments, closed });
  }
  return chains;
}

/** Adds waiting pieces to the end of a chain as long as one fits; takes them out of `waiting`. */
function grow(segments: Segment[], waiting: (readonly Segment[])[], noise: number): Segment[] {
  for (;;) {
    const end = segments.at(-1)?.to;
    if (!end) return segments;
    const index = waiting.findIndex((piece) => touches(piece, end, noise));
    const [next] = index < 0 ? [] : waiting.splice(index, 1);
    if (!next) return segments;
    const start = next[0]?.from;
    segments.push(...(start && meet(start, end, noise) ? next : turned(next)));
  }
}

function touches(piece: readonly Segment[], end: Vec2, noise: number): boolean {
  const first = piece[0], last = piece.at(-1);
  return first !== undefined && last !== undefined && (meet(first.from, end, noise) || meet(last.to, end, noise));
}

function turned(segments: readonly Segment[]): Segment[] {
  return segments.map((segment) => reverseSegment(segment)).reverse();
}

function meet(a: Vec2, b: Vec2, noise: number): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) <= noise;
}
