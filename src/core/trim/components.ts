// Into how many pieces has the pipe been cut? Stretches of neighbouring spans that overlap belong together.

import { ROOT_NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import type { Span } from "./spans";
import { stretchesOn } from "./stretches";

/** Number of separate pieces of the kept surface (0 when nothing is left); touching in a point does not join. */
export function componentCount(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[]): number {
  const firsts: number[] = [];
  let total = 0;
  for (const span of spans) {
    firsts.push(total);
    total += span.stretches.length;
  }
  const parent = Array.from({ length: total }, (_, i) => i);
  const root = (i: number): number => {
    let at = i;
    while (parent[at] !== at && parent[at] !== undefined) at = parent[at] ?? at;
    return at;
  };
  let pieces = total;
  const noise = ROOT_NOISE * pipeSize(pipe);
  spans.forEach((span, k) => {
    const next = (k + 1) % spans.length;
    const after = spans[next];
    if (!after || (next === k && spans.length === 1)) return;
    const ended = stretchesOn(cutters, span, span.to);
    const begun = stretchesOn(cutters, after, after.from);
    ended.forEach((a, i) => begun.forEach((b, j) => {
      if (Math.min(a.to, b.to) - Math.max(a.from, b.from) <= noise) return;
      const one = root((firsts[k] ?? 0) + i);
      const other = root((firsts[next] ?? 0) + j);
      if (one === other) return;
      parent[one] = other;
      pieces--;
    }));
  });
  return pieces;
}
