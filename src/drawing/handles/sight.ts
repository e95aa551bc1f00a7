// How the frame of a feature is seen on the sheet, and which view sees it truest.

import { type Piece, type Vec2, degrees, girthAt, radians, wrapTurn } from "../../core/index";
import type { Board } from "../board/board";
import { type Place, fromSheet, onSheet } from "../place";
import type { Broadside } from "../view/views";

export interface Sight {
  readonly onSheet: (point: Vec2) => Vec2;
  readonly fromSheet: (point: Vec2) => Vec2;
}

/** A view that sees every foot across shorter than this shows the upright plane through the axis too narrow to point in. */
const LEAST_SQUINT = 0.3;

/** The upright plane through the axis that runs across in direction `across` (radians), in the view that sees it truest. */
export function sightOfPlane(board: Board, across: number): Sight | null {
  const seen = broadsides(board).map(({ view, place }) => ({ place, squint: Math.sin(across - view.facing) }));
  const best = seen.reduce<(typeof seen)[number] | null>((a, b) => (a && Math.abs(a.squint) > Math.abs(b.squint) - 1e-9 ? a : b), null);
  return best && Math.abs(best.squint) >= LEAST_SQUINT ? flatSight(best.place, clean(best.squint)) : null;
}

/** A wall looked at squarely, from outside unless `through` says that what is seen there goes right through; null when no view does. */
export function sightOfWall(board: Board, direction: number, through: boolean): Sight | null {
  const seen = broadsides(board).map(({ view, place }) => ({ place, squint: clean(Math.cos(direction - view.facing)) }));
  const square = seen.find(({ squint }) => squint === 1) ?? seen.find(({ squint }) => through && squint === -1);
  return square ? flatSight(square.place, square.squint) : null;
}

/** The wall as the pattern shows it: x is sideways from `direction` (radians) as seen from outside, mm on the surface of the cut. */
export function sightOfPattern(board: Board, piece: Piece, direction: number): Sight {
  const { cutRadius } = piece.form;
  const girth = girthSight(board, piece);
  return {
    onSheet: ({ x, y }) => girth.onSheet({ x: direction + Math.asin(Math.max(-1, Math.min(1, x / cutRadius))), y }),
    fromSheet: (point) => {
      const { x: theta, y } = girth.fromSheet(point);
      const turn = halfTurn(theta - direction);
      return { x: cutRadius * Math.sin(Math.max(-Math.PI / 2, Math.min(Math.PI / 2, turn))), y };
    },
  };
}

/** The pattern with x as a direction in degrees; `swing` (radians) is how far what is seen stands beside that direction. */
export function sightOfDirections(board: Board, piece: Piece, swing: number): Sight {
  const girth = girthSight(board, piece);
  return {
    onSheet: ({ x, y }) => girth.onSheet({ x: radians(x) + swing, y }),
    fromSheet: (point) => {
      const { x: theta, y } = girth.fromSheet(point);
      return { x: degrees(wrapTurn(theta - swing)), y };
    },
  };
}

/** The front view as it is: x sideways, y along the axis. */
export function sightOfFront({ blocks }: Board): Sight {
  return flatSight(blocks.front.place, 1);
}

/** Points of the sheet as they are. */
export const sheetSight: Sight = { onSheet: (point) => point, fromSheet: (point) => point };

/** The pattern with x as the direction of an element, radians. */
function girthSight(board: Board, { pattern, form: { radius } }: Piece): Sight {
  const { place } = board.blocks.pattern;
  return {
    onSheet: ({ x, y }) => onSheet(place, { x: girthAt(pattern, radius, x), y }),
    fromSheet: (point) => {
      const { x, y } = fromSheet(place, point);
      return { x: pattern.seam + (pattern.towards * x) / radius, y };
    },
  };
}

function flatSight(place: Place, squint: number): Sight {
  return {
    onSheet: ({ x, y }) => onSheet(place, { x: x * squint, y }),
    fromSheet: (point) => {
      const { x, y } = fromSheet(place, point);
      return { x: x / squint, y };
    },
  };
}

function broadsides({ views, blocks }: Board): { view: Broadside; place: Place }[] {
  return (["front", "top", "side"] as const).flatMap((name) => {
    const view = views[name];
    return view.kind === "broadside" ? [{ view, place: blocks[name].place }] : [];
  });
}

/** A cosine or sine free of the noise of right angles. */
function clean(value: number): number {
  return Math.abs(Math.abs(value) - 1) < 1e-9 ? Math.sign(value) : value;
}

/** The same turn in [-π, π). */
function halfTurn(turn: number): number {
  return wrapTurn(turn + Math.PI) - Math.PI;
}
