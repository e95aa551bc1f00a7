// How was a development drawn? Everything a reading depends on, as the student did it; done rightly it gives the true readings, and
// each known mistake changes a field or two.

import type { Job } from "../../job/job";
import { type HeightTable, heightTable } from "./heightTable";
import type { Readings } from "./readings";

/** A change of the job the student had in mind; `key` tells changes apart. */
export interface JobChange {
  readonly key: string;
  readonly change: (job: Job) => Job;
}

export interface Work {
  /** The piece that was drawn differs from the one that was set by these. */
  readonly changes: readonly JobChange[];
  /** Diameter (mm) by which the stretch-out was reckoned; null: that of the piece drawn. */
  readonly girthDiameter: number | null;
  /** Spaces stepped off as chords of the circle instead of equal parts of its girth. */
  readonly stepped: boolean;
  /** Equal parts of the circle the ordinates come from, of the girth the spacing comes from, and the spaces laid out. */
  readonly divisions: number;
  readonly spaces: number;
  readonly laid: number;
  /** Direction (radians) of station 0; 1: numbered with growing θ. */
  readonly start: number;
  readonly towards: 1 | -1;
  /** From station `at` on the ordinate of the station `by` further on was taken. */
  readonly slip: { readonly at: number; readonly by: 1 | -1 } | null;
  /** Ordinates measured downwards from this height (mm); null: upwards from the base line. */
  readonly downFrom: number | null;
  /** Ordinates, and the stretch-out with its spacing, are this many times too long. */
  readonly ordinateFactor: number;
  readonly girthFactor: number;
  /** The edge between the stations: true, a smooth curve through them, or straight lines. */
  readonly between: "true" | "smooth" | "straight";
}

/** The work done rightly, by the numbering of the readings; `stepped`: where the teacher's rule is to step chords. */
export function rightWork({ count, start, towards }: Readings, stepped: boolean): Work {
  return {
    changes: [], girthDiameter: null, stepped, divisions: count, spaces: count, laid: count, start, towards, slip: null,
    downFrom: null, ordinateFactor: 1, girthFactor: 1, between: "true",
  };
}

/** The heights of the piece each work has drawn; every piece is made once. */
export type PieceOf = (work: Work) => HeightTable | null;

/** Gives the pieces of works on one job; null for a piece that cannot be made. */
export function piecesOf(job: Job): PieceOf {
  const made = new Map<string, HeightTable | null>();
  return ({ changes }) => {
    const key = changes.map((change) => change.key).join(" ");
    let table = made.get(key);
    if (table === undefined) {
      table = heightTable(changes.reduce((changed, { change }) => change(changed), job));
      made.set(key, table);
    }
    return table;
  };
}
