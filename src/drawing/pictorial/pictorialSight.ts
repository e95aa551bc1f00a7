// From where is a pictorial view seen, and what are right, up and towards the viewer in the frame of the rolled sheet?

import { type Piece, type Vec2, type Vec3, TURN, rolledPoint } from "../../core/index";

/** A direction of sight. */
export interface Sight {
  /** Where the viewer stands about the vertical, radians: 0 in front, growing to the right. */
  readonly turn: number;
  /** How far above the level the viewer stands, radians, -π/2 to π/2. */
  readonly tilt: number;
}

/** Unit vectors of the picture in the frame of the rolled sheet. */
export interface SightAxes {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly viewer: Vec3;
}

/**
 * The isometric view: all three axes of the world equally foreshortened, seen from above in front, and from the side that the
 * side view shows: from the left in first angle, from the right in third.
 */
export function isometric(projection: "first" | "third"): Sight {
  return { turn: projection === "first" ? -Math.PI / 4 : Math.PI / 4, tilt: Math.atan(Math.SQRT1_2) };
}

/**
 * The axes of the picture for a piece rolled up to `fraction`. On its way the sheet is turned about its axis, mostly towards the end, from
 * facing the front, when flat, to the piece's own place in the views; a lying piece lies all the while.
 */
export function sightAxes(piece: Piece, { turn, tilt }: Sight, fraction: number): SightAxes {
  const { attitude } = piece.form;
  const turned = fraction ** 3 * turnToViews(piece);
  const intoSheet = (world: Vec3) => turnedBack(attitude === "upright" ? world : tippedBack(world), turned);
  return {
    right: intoSheet({ x: Math.cos(turn), y: Math.sin(turn), z: 0 }),
    up: intoSheet({ x: -Math.sin(tilt) * Math.sin(turn), y: Math.sin(tilt) * Math.cos(turn), z: Math.cos(tilt) }),
    viewer: intoSheet({ x: Math.cos(tilt) * Math.sin(turn), y: -Math.cos(tilt) * Math.cos(turn), z: Math.sin(tilt) }),
  };
}

/** The turn (radians, anticlockwise seen from above) that puts the rolled sheet in its place in the views: within half a turn either way. */
function turnToViews({ pattern: { seam, towards } }: Piece): number {
  const turn = towards < 0 ? seam : seam - Math.PI;
  return turn - TURN * Math.round(turn / TURN);
}

/** A direction of the world in the frame of a piece that was tipped over to the right. */
function tippedBack({ x, y, z }: Vec3): Vec3 {
  return { x: -z, y, z: x };
}

function turnedBack({ x, y, z }: Vec3, angle: number): Vec3 {
  const cos = Math.cos(angle), sin = Math.sin(angle);
  return { x: x * cos + y * sin, y: y * cos - x * sin, z };
}

/** A point of the pattern in the picture, mm. */
export function pictured({ form, pattern }: Piece, { right, up }: SightAxes, point: Vec2, fraction: number): Vec2 {
  const solid = rolledPoint(form, pattern.towards, point, fraction);
  return { x: along(right, solid), y: along(up, solid) };
}

function along(axis: Vec3, { x, y, z }: Vec3): number {
  return axis.x * x + axis.y * y + axis.z * z;
}
