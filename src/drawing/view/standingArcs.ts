// Where round the girth does anything of the pipe stand at all? That is what a view along the axis shows.

import { type Piece, keptAt } from "../../core/index";

export interface GirthArc {
  /** Directions, radians; from < to, at most one turn apart. */
  readonly from: number;
  readonly to: number;
  /** Whether any material is left on its elements. */
  readonly standing: boolean;
}

/** The whole turn in arcs on which material stands or does not; one arc of a full turn when nothing changes. */
export function standingArcs(piece: Piece): GirthArc[] {
  const turn = 2 * Math.PI;
  const wrap = (theta: number) => ((theta % turn) + turn) % turn;
  const places = [...new Set(piece.trimmed.edges.flatMap(({ from, to }) => [wrap(from), wrap(to)]))].sort((a, b) => a - b);
  const [first] = places;
  if (first === undefined) return [{ from: 0, to: turn, standing: true }];
  const arcs: GirthArc[] = [];
  places.forEach((from, i) => {
    const to = places[i + 1] ?? first + turn;
    if (to - from < 1e-9) return;
    const standing = keptAt(piece, (from + to) / 2).after.length > 0;
    const last = arcs.at(-1);
    if (last?.standing === standing) arcs[arcs.length - 1] = { from: last.from, to, standing };
    else arcs.push({ from, to, standing });
  });
  return joinEnds(arcs, turn);
}

function joinEnds(arcs: GirthArc[], turn: number): GirthArc[] {
  const first = arcs[0], last = arcs.at(-1);
  if (!first || !last) return [];
  if (first === last) return [{ from: 0, to: turn, standing: first.standing }];
  if (first.standing !== last.standing) return arcs;
  return [...arcs.slice(1, -1), { from: last.from, to: first.to + turn, standing: first.standing }];
}
