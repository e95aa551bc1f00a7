// The directed edges between nodes, span by span, with the kept material on the left.

import type { Pipe } from "../form/pipe";
import type { Cutter, FaceRef } from "../cut/cutter";
import type { Owner } from "../cut/owner";
import { removedStretches } from "../cut/removedStretches";
import { type Node, nodeAt, nodesOf } from "./nodes";
import type { Span } from "./spans";
import { cutterAt } from "../cut/heightOn";
import { type Stretch, stretchesOn } from "./stretches";

/** A directed edge from node to node; along an element face is null and from = to. */
export interface Link {
  readonly start: Node;
  readonly end: Node;
  readonly from: number;
  readonly to: number;
  readonly face: FaceRef | null;
  readonly owner: Owner;
}

interface Border {
  readonly theta: number;
  readonly ended: readonly Stretch[];
  readonly begun: readonly Stretch[];
  readonly nodes: readonly Node[];
  /** Whether the edge along this element is the seam at height z: material on both sides. */
  readonly seam: (z: number) => boolean;
}

/** How far (radians) beside an element to look for the cutter that makes an edge along it. */
const BESIDE = 1e-6;

/** All links of the surface cut open where the first span begins and the last one ends. */
export function linksOf(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[]): Link[] {
  const borders = bordersOf(pipe, cutters, spans);
  const links: Link[] = [];
  spans.forEach((span, k) => {
    const start = borders[k];
    const end = borders[k + 1];
    if (start && end) span.stretches.forEach((_, i) => links.push(...alongFaces(cutters, span, start, end, i)));
  });
  for (const border of borders) {
    const ownerAt = (z: number): Owner => (border.seam(z) ? { kind: "seam" } : ownerBeside(cutters, border.theta, z));
    links.push(...alongElement(border, ownerAt));
  }
  return links;
}

/** The spans' borders from the seam round to the seam again. At both the sheet ends: what stands on the other side is the other edge of the seam. */
function bordersOf(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[]): Border[] {
  const places = [...spans.map(({ from }) => from), ...spans.slice(-1).map(({ to }) => to)];
  return places.map((theta, k): Border => {
    const before = spans.at(k - 1);
    const after = spans[k] ?? spans[0];
    const ended = before ? stretchesOn(cutters, before, theta) : [];
    const begun = after ? stretchesOn(cutters, after, theta) : [];
    const nodes = nodesOf(pipe, cutters, theta, [...ended, ...begun]);
    const covers = (z: number) => ({ from, to }: Stretch) => from < z && to > z;
    return {
      theta, nodes, ended: k === 0 ? [] : ended, begun: k === spans.length ? [] : begun,
      seam: (z) => (k === 0 || k === spans.length) && ended.some(covers(z)) && begun.some(covers(z)),
    };
  });
}

/** The lower edge (towards growing θ) and the upper edge (back) of stretch i. */
function alongFaces(cutters: readonly Cutter[], span: Span, start: Border, end: Border, i: number): Link[] {
  const opened = start.begun[i];
  const closed = end.ended[i];
  if (!opened || !closed) throw new RangeError("a span lost a stretch");
  const low = { start: nodeAt(start.nodes, opened.from), end: nodeAt(end.nodes, closed.from) };
  const high = { start: nodeAt(end.nodes, closed.to), end: nodeAt(start.nodes, opened.to) };
  const lower: Link = { ...low, from: span.from, to: span.to, face: opened.fromFace, owner: cutterAt(cutters, opened.fromFace).owner };
  const upper: Link = { ...high, from: span.to, to: span.from, face: opened.toFace, owner: cutterAt(cutters, opened.toFace).owner };
  low.start.right.push({ link: lower, leaving: true });
  high.end.right.push({ link: upper, leaving: false });
  low.end.left.push({ link: lower, leaving: false });
  high.start.left.push({ link: upper, leaving: true });
  return [lower, upper];
}

/** Edges along the border's element: where material stands on one side only. Up when it stands before, down when after. */
function alongElement(border: Border, ownerAt: (z: number) => Owner): Link[] {
  const { theta, ended, begun, nodes } = border;
  return nodes.slice(1).flatMap((high, i) => {
    const low = nodes[i];
    if (!low) return [];
    const stands = (stretches: readonly Stretch[]) =>
      stretches.some(({ from, to }) => nodeAt(nodes, from).z <= low.z && nodeAt(nodes, to).z >= high.z);
    const before = stands(ended);
    if (before === stands(begun)) return [];
    const [start, end] = before ? [low, high] : [high, low];
    const link: Link = { start, end, from: theta, to: theta, face: null, owner: ownerAt((low.z + high.z) / 2) };
    low.up = { link, leaving: before };
    high.down = { link, leaving: !before };
    return [link];
  });
}

/** The cutter that takes the point (θ, z) away on one side of the element only. */
function ownerBeside(cutters: readonly Cutter[], theta: number, z: number): Owner {
  const takes = (cutter: Cutter, index: number, at: number) =>
    removedStretches(cutter, index, at).some(({ from, to }) => z > from && z < to);
  const owner = cutters.find((cutter, i) => takes(cutter, i, theta - BESIDE) !== takes(cutter, i, theta + BESIDE))?.owner;
  return owner ?? { kind: "seam" };
}
