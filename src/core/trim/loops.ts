// The edges of the kept part as closed loops on the surface cut open at the seam. The loops are linked through their
// common nodes, by order and not by measuring angles, so they always close and never cross: where several edges meet
// in a point the loop takes the sharpest left turn, which keeps it round its own material.

import { ROOT_NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import { sameOwner } from "../cut/owner";
import { type Edge, edgePoint, tangentAlong } from "./edge";
import { type Link, linksOf } from "./links";
import { following } from "./nodes";
import type { Span } from "./spans";

/**
 * Closed loops of edges, kept material on the left, over the spans in order (the first starts at the seam, the last
 * ends there one turn later). Edges that go on along the same face over a border are one edge. Loops thinner than
 * noise are left out.
 */
export function loopsOf(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[]): Edge[][] {
  const used = new Set<Link>();
  const loops: Edge[][] = [];
  for (const first of linksOf(pipe, cutters, spans)) {
    const loop: Link[] = [];
    for (let link = first; !used.has(link); link = following(link)) {
      used.add(link);
      loop.push(link);
    }
    if (loop.length > 0) loops.push(joined(loop, (last, next) => goesOn(pipe, cutters, last, next)));
  }
  return loops.filter((loop) => !isThin(pipe, cutters, loop));
}

/** Links that go on along the same face or element become one edge. */
function joined(loop: readonly Link[], isOneEdge: (last: Link, next: Link) => boolean): Edge[] {
  const breaks = loop.flatMap((link, i) => (isOneEdge(loop.at(i - 1) ?? link, link) ? [] : [i]));
  const begin = breaks[0] ?? 0;
  const edges: Edge[] = [];
  breaks.forEach((at, i) => {
    const next = breaks[i + 1] ?? begin + loop.length;
    const first = loop[at];
    const last = loop[(next - 1) % loop.length];
    if (!first || !last) return;
    edges.push({ from: first.from, to: last.to, face: first.face, z: [first.start.z, last.end.z], owner: first.owner });
  });
  return edges;
}

/** Whether two links are one edge: nothing else meets there, the face is the same, and there is no corner. */
function goesOn(pipe: Pipe, cutters: readonly Cutter[], last: Link, next: Link): boolean {
  const { right, left, up, down } = next.start;
  const spokes = right.length + left.length + (up ? 1 : 0) + (down ? 1 : 0);
  if (spokes !== 2 || last === next || !sameOwner(last.owner, next.owner)) return false;
  if (!last.face || !next.face) return !last.face && !next.face;
  const sameWay = last.to > last.from === next.to > next.from;
  if (!sameWay || last.face.cutter !== next.face.cutter || last.face.face !== next.face.face) return false;
  const before = tangentAlong(pipe, cutters, next.face, next.from, -1);
  const after = tangentAlong(pipe, cutters, next.face, next.from, 1);
  return before.y === after.y;
}

function isThin(pipe: Pipe, cutters: readonly Cutter[], loop: readonly Edge[]): boolean {
  const [one, two] = loop;
  if (loop.length > 2 || !one || !two || !one.face || !two.face) return loop.length < 2;
  const gap = edgePoint(cutters, one, 0.5).z - edgePoint(cutters, two, 0.5).z;
  return Math.abs(gap) < ROOT_NOISE * pipeSize(pipe);
}
