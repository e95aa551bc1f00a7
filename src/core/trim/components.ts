// Into how many pieces has the pipe been cut? Stretches of neighbouring spans that overlap belong together.

import { ROOT_NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import type { Span } from "./spans";
import { stretchesOn } from "./stretches";

/** Number of separate pieces of the kept surface (0 when nothing is left); touching in a point does not join. */
export function componentCount(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[]): number {
  const noise = ROOT_NOISE * pipeSize(pipe);
  // Each stretch, numbered through all spans, points to one of its piece; the first of a piece points to itself.
  const parent: number[] = [];
  const numbers = spans.map(({ stretches }) => stretches.map(() => parent.push(parent.length) - 1));
  spans.forEach((span, k) => {
    const next = (k + 1) % spans.length;
    for (const [i, j] of overlaps(cutters, span, spans[next] ?? span, noise)) {
      parent[firstOf(parent, numbers[k]?.[i] ?? 0)] = firstOf(parent, numbers[next]?.[j] ?? 0);
    }
  });
  return parent.filter((other, i) => other === i).length;
}

/** The numbers of the stretches of two neighbouring spans that share more than `noise` (mm) of their common border. */
function overlaps(cutters: readonly Cutter[], span: Span, after: Span, noise: number): [number, number][] {
  const begun = stretchesOn(cutters, after, after.from);
  return stretchesOn(cutters, span, span.to).flatMap((a, i) => begun.flatMap((b, j): [number, number][] =>
    (Math.min(a.to, b.to) - Math.max(a.from, b.from) > noise ? [[i, j]] : [])));
}

function firstOf(parent: readonly number[], i: number): number {
  let at = i;
  for (let up = parent[at]; up !== undefined && up !== at; up = parent[at]) at = up;
  return at;
}
