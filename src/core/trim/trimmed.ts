// A piece's surface with its cuts made: spans, loops of edges, area and connectedness.

import type { Pipe } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import { componentCount } from "./components";
import type { Edge } from "./edge";
import { loopsOf } from "./loops";
import { type Span, spansOf } from "./spans";
import { surfaceArea } from "./surfaceArea";

export interface Trimmed {
  /** Once round, ascending, the first beginning at the seam. */
  readonly spans: readonly Span[];
  readonly loops: readonly (readonly Edge[])[];
  /** All edges of all loops. */
  readonly edges: readonly Edge[];
  readonly components: number;
  /** Whether every element keeps something. */
  readonly closedRound: boolean;
  /** mm², by integration over the elements. */
  readonly area: number;
}

/** The trimmed surface, cut open at the seam (θ, radians). */
export function trimPipe(pipe: Pipe, cutters: readonly Cutter[], seam: number): Trimmed {
  const spans = spansOf(pipe, cutters, seam);
  const loops = loopsOf(pipe, cutters, spans);
  return {
    spans, loops, edges: loops.flat(), components: componentCount(pipe, cutters, spans),
    closedRound: spans.every(({ stretches }) => stretches.length > 0), area: surfaceArea(pipe, cutters, spans),
  };
}
