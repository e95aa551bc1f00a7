import { develop, type Development } from "../../src/core/index";
import { EXAMPLES } from "../../src/app/examples/index";
import { openingCut, pipeJob, planeCut, type Job } from "../support/pipeJob";

/** One development to be timed. */
export interface DevelopingCase {
  readonly name: string;
  readonly size: number;
  readonly data: unknown;
}

export const exampleCases: readonly DevelopingCase[] = EXAMPLES.map(({ id, data }) => ({ name: id, size: 1, data }));

export const stationCases: readonly DevelopingCase[] = [12, 24, 120, 360].map((stations) => ({
  name: `${stations} stations`, size: stations, data: pipeJob({ diameter: 200, length: 600, stations, cuts: [planeCut({ angle: 30, direction: 20, height: 480 }), ...holes(3)] }),
}));

export const cutCases: readonly DevelopingCase[] = [1, 2, 4, 8, 16].map((cuts) => ({
  name: `${cuts} cut${cuts > 1 ? "s" : ""}`, size: cuts, data: pipeJob({ diameter: 200, length: 600, stations: 24, cuts: [planeCut({ angle: 30, direction: 20, height: 480 }), ...holes(cuts - 1)] }),
}));

/** mm; on the axis. */
export const mitreHeight = 180;

/** The one cut that the kernel makes too. */
export const mitre: Job = pipeJob({ diameter: 100, length: 300, stations: 12, cuts: [planeCut({ angle: 45, height: mitreHeight })] });

/** The development, which must succeed: a bench of refusals would be fast. */
export function developed(data: unknown): Development {
  const outcome = develop(data);
  if (!outcome.ok) throw new Error(`a job of the bench is refused: ${JSON.stringify(outcome.problems)}`);
  return outcome.development;
}

/** Segments and their joints on all loops, and stations: what was worked out. */
export function extent({ pieces }: Development): { readonly stations: number; readonly loops: number; readonly segments: number; readonly points: number } {
  const loops = pieces.flatMap(({ pattern }) => pattern.loops);
  const segments = loops.flatMap((loop) => loop.segments);
  return {
    stations: pieces.reduce((sum, { stations }) => sum + stations.length, 0),
    loops: loops.length,
    segments: segments.length,
    points: segments.reduce((sum, { kind }) => sum + (kind === "cubic" ? 3 : 1), 0),
  };
}

/** Round holes in a screw line round the pipe, each clear of the others. */
function holes(count: number) {
  return Array.from({ length: count }, (_, i) => openingCut({ shape: "round", diameter: 30 }, { id: `hole-${i}`, height: 40 + 20 * i, direction: (i * 95) % 360 }));
}
