// Where can the pipe and its cuts be taken hold of on the board, each in the view that shows it true?

import type { Cut, Development, OpeningCut, Piece, ShapedCut, Vec2 } from "../../core/index";
import { radians } from "../../core/index";
import type { Board } from "../board/board";
import type { Ref } from "../display";
import { arcEndGrips } from "./arcEndGrips";
import { directionGrip } from "./directionGrip";
import { freeGrips } from "./freeGrips";
import type { Grip } from "./grip";
import { openingCentreGrip, openingDirectionGrip, openingSizeGrips } from "./openingGrips";
import { pipeGrips } from "./pipeGrips";
import { planeGrips } from "./planeGrips";
import { ogeeGrips, stepGrips } from "./risingGrips";
import { type Sight, sheetSight, sightOfDirections, sightOfFront, sightOfPattern, sightOfPlane, sightOfWall } from "./sight";
import { veeGrips } from "./veeGrips";

export interface Handle {
  /** The id of the cut, or "part", and what is held: `roof-slope.height`. */
  readonly id: string;
  readonly clause: Ref["clause"];
  /** On the sheet. */
  readonly at: Vec2;
  /** The fields it changes, by their paths in the part or the cut. */
  readonly fields: readonly string[];
  readonly grip: Grip;
  readonly sight: Sight;
}

/** The handles of the pipe, then those of each cut that is on, in the order of the job. @throws RangeError for a piece that does not exist. */
export function handles(board: Board, { job, pieces }: Development, index = 0): Handle[] {
  const piece = pieces[index];
  if (!piece) throw new RangeError(`no piece ${index} among ${pieces.length}`);
  const front = sightOfFront(board);
  return [
    ...pipeGrips(job, piece).map((grip) => handleOf("part", "part", grip, front)),
    ...job.part.cuts.filter(({ on }) => on).flatMap((cut) =>
      seenGrips(cut, board, piece).map(({ grip, sight }) => handleOf(cut.id, `cut:${cut.id}`, grip, sight))),
  ];
}

function handleOf(owner: string, clause: Ref["clause"], grip: Grip, sight: Sight): Handle {
  const fields = grip.kind === "size" ? [grip.field] : [grip.across, grip.along].flatMap((coordinate) => (coordinate ? [coordinate.field] : []));
  return { id: `${owner}.${grip.name}`, clause, at: sight.onSheet(grip.point), fields, grip, sight };
}

interface Seen {
  readonly grip: Grip;
  readonly sight: Sight;
}

function seenGrips(cut: Cut, board: Board, piece: Piece): Seen[] {
  const { cutRadius } = piece.form;
  const swing = cut.kind === "opening" ? Math.asin(Math.max(-1, Math.min(1, cut.offset / cutRadius))) : 0;
  const direction = directionGrip(cut, board, piece, swing);
  const round: Seen[] = direction ? [{ grip: direction, sight: sheetSight }] : [];
  if (cut.kind === "opening") return [...openingSeen(cut, board, piece, swing), ...round];
  const across = radians(cut.direction) + (cut.kind === "plane" ? 0 : Math.PI / 2);
  const sight = sightOfPlane(board, across);
  const grips = cut.kind === "plane" ? planeGrips(cut, cutRadius, reachOf(piece)) : profileGrips(cut, piece);
  return [...(sight ? grips.map((grip) => ({ grip, sight })) : []), ...round];
}

/** How far a handle may stand off the point it turns about, mm. */
function reachOf({ form }: Piece): number {
  return 0.6 * form.length;
}

function profileGrips({ profile, end }: ShapedCut, piece: Piece): Grip[] {
  const { cutRadius } = piece.form;
  switch (profile.shape) {
    case "hollow":
    case "nose":
      return arcEndGrips(profile, end, cutRadius);
    case "ogee":
      return ogeeGrips(profile, cutRadius);
    case "step":
      return stepGrips(profile, cutRadius);
    case "vee":
      return veeGrips(profile, end, cutRadius, reachOf(piece));
    case "free":
      return freeGrips(profile);
  }
}

/** In the view that faces the opening, else on the pattern. */
function openingSeen(cut: OpeningCut, board: Board, piece: Piece, swing: number): Seen[] {
  const { cutRadius } = piece.form;
  const direction = radians(cut.direction);
  const sizes = openingSizeGrips(cut, cutRadius);
  const wall = sightOfWall(board, direction, cut.through === "both");
  if (wall) return [openingCentreGrip(cut, cutRadius), ...sizes].map((grip) => ({ grip, sight: wall }));
  const pattern = sightOfPattern(board, piece, direction);
  return [{ grip: openingDirectionGrip(cut), sight: sightOfDirections(board, piece, swing) }, ...sizes.map((grip) => ({ grip, sight: pattern }))];
}
