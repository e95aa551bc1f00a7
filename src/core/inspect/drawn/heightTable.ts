// How high do the lines of a piece stand on any element? Only what a reading needs: no loops, no pattern, each element met once.

import { wrapTurn } from "../../numeric/angle";
import { roundPipe } from "../../form/pipe";
import type { Job } from "../../job/job";
import { pipeCutters } from "../../part/pipeCutters";
import { spansOf } from "../../trim/spans";
import type { Stretch } from "../../trim/stretches";
import { ruledElement } from "../../unroll/stations";
import type { ReadLine } from "./readings";

/** Heights in mm from the base line: none where the line does not meet the element, two where an edge runs along it. */
export type ElementHeights = Readonly<Record<ReadLine, readonly number[]>>;

export interface HeightTable {
  /** Diameter in mm of the surface that is developed. */
  readonly developed: number;
  readonly at: (theta: number) => ElementHeights;
}

/** Heights (mm) nearer than this are one. */
const SAME = 1e-6;

/** The heights of a job's piece by direction (radians), exact; null when the piece cannot be made. */
export function heightTable(job: Job): HeightTable | null {
  const { diameter, basis, thickness } = job.part;
  if (!(diameter + { outside: -thickness, inside: thickness, mean: 0 }[basis] > 0)) return null;
  const pipe = roundPipe(job.part, job.fabrication);
  const { cutters, problems } = pipeCutters(pipe, job.part.cuts);
  if (problems.length > 0) return null;
  const spans = spansOf(pipe, cutters, 0);
  if (spans.every(({ stretches }) => stretches.length === 0)) return null;
  const met = new Map<number, ElementHeights>();
  return { developed: pipe.developed, at };

  function at(theta: number): ElementHeights {
    const key = Math.round(wrapTurn(theta) * 1e9);
    const known = met.get(key);
    if (known) return known;
    const { before, after, openings } = ruledElement(pipe, cutters, spans, { theta, girth: 0, towards: 1 });
    const [opening] = openings;
    const heights = {
      top: distinct([before.at(-1), after.at(-1)], "to"), bottom: distinct([before[0], after[0]], "from"),
      lower: opening ? [opening.from] : [], upper: opening ? [opening.to] : [],
    };
    met.set(key, heights);
    return heights;
  }
}

function distinct([one, other]: readonly (Stretch | undefined)[], side: "from" | "to"): number[] {
  if (!one || !other) return one || other ? [(one ?? other)?.[side] ?? 0] : [];
  return Math.abs(one[side] - other[side]) < SAME ? [one[side]] : [one[side], other[side]];
}
