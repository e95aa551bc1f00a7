// The area of the kept surface, straight from the stretches of its elements: independent of edges and pattern.

import { integrate } from "../numeric/quadrature";
import type { Pipe } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import type { Span } from "./spans";
import { stretchesOn } from "./stretches";

/** Area in mm² of the kept surface, to about 1e-10 of the whole pipe's. */
export function surfaceArea(pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[]): number {
  const tolerance = pipe.girth * pipe.length * 1e-10;
  return spans.reduce((sum, span) => {
    if (span.stretches.length === 0) return sum;
    const half = (span.to - span.from) / 2;
    // θ follows a half cosine wave, which takes the square-root ends out of the integrand.
    const kept = (wave: number): number => {
      const theta = span.from + half * (1 - Math.cos(wave));
      const length = stretchesOn(cutters, span, theta).reduce((total, { from, to }) => total + to - from, 0);
      return length * half * Math.sin(wave);
    };
    return sum + pipe.radius * integrate(kept, 0, Math.PI, tolerance / spans.length / pipe.radius);
  }, 0);
}
