// The grips of an opening as seen from outside, x sideways from its direction: sizes, turn, centre.

import { LIMITS, type OpeningCut, type Outline, type Vec2, degrees, radians } from "../../core/index";
import { type Grip, type PointGrip, type SizeGrip, within } from "./grip";

type Turned = Exclude<Outline, { shape: "round" }>;

/** The centre, for a view that shows the opening squarely: sideways is its offset. */
export function openingCentreGrip({ offset, height, outline }: OpeningCut, radius: number): PointGrip {
  const { across, along } = halfExtent(outline);
  const room = radius - across;
  return {
    kind: "point", name: "centre", point: { x: offset, y: height },
    across: { field: "offset", quantity: "length" }, along: { field: "height", quantity: "length" },
    put: ({ x, y }) => ({ offset: x, height: y }),
    ...(room > 0 && along > 0 ? { fits: { across: [{ value: room, why: "tangent" }, { value: -room, why: "tangent" }] } } : {}),
  };
}

/** The centre, for the pattern: x is the direction in degrees. */
export function openingDirectionGrip({ direction, height }: OpeningCut): PointGrip {
  return {
    kind: "point", name: "centre", point: { x: ((direction % 360) + 360) % 360, y: height },
    across: { field: "direction", quantity: "angle" }, along: { field: "height", quantity: "length" },
    put: ({ x, y }) => ({ direction: x, height: y }),
  };
}

/** Diameter; or width, length and turn. */
export function openingSizeGrips({ outline, offset, height }: OpeningCut, radius: number): Grip[] {
  const centre: Vec2 = { x: offset, y: height };
  if (outline.shape !== "round") return turnedGrips(outline, centre);
  const pointFor = (diameter: number): Vec2 => ({ x: centre.x + diameter * Math.SQRT1_2 / 2, y: centre.y + diameter * Math.SQRT1_2 / 2 });
  return [{
    ...sizeGrip("diameter", outline.diameter, pointFor, ({ x, y }) => 2 * Math.hypot(x - centre.x, y - centre.y)),
    fits: [{ value: 2 * radius, why: "own-radius" }, ...(Math.abs(offset) < radius ? [{ value: 2 * (radius - Math.abs(offset)), why: "tangent" } as const] : [])],
  }];
}

function turnedGrips(outline: Turned, centre: Vec2): Grip[] {
  const { width, length, turn } = outline;
  const angle = radians(turn);
  const place = (across: number, along: number): Vec2 => ({
    x: centre.x + across * Math.cos(angle) - along * Math.sin(angle), y: centre.y + across * Math.sin(angle) + along * Math.cos(angle),
  });
  const across = ({ x, y }: Vec2) => (x - centre.x) * Math.cos(angle) + (y - centre.y) * Math.sin(angle);
  const along = ({ x, y }: Vec2) => (y - centre.y) * Math.cos(angle) - (x - centre.x) * Math.sin(angle);
  return [
    sizeGrip("width", width, (value) => place(value / 2, 0), (point) => 2 * Math.abs(across(point))),
    sizeGrip("length", length, (value) => place(0, value / 2), (point) => 2 * Math.abs(along(point))),
    turnGrip(outline, centre),
  ];
}

function sizeGrip(name: "diameter" | "width" | "length", value: number, pointFor: (value: number) => Vec2, sizeAt: (point: Vec2) => number): SizeGrip {
  const field = `outline.${name}`;
  const { min, max } = LIMITS.opening;
  return {
    kind: "size", name, field, quantity: "length", value, point: pointFor(value), pointFor,
    valueAt: (point) => within(sizeAt(point), min, max), put: (next) => ({ [field]: within(next, min, max) }),
  };
}

function turnGrip(outline: Turned, centre: Vec2): SizeGrip {
  const corner = cornerOf(outline);
  const own = Math.atan2(corner.y, corner.x);
  const far = Math.hypot(corner.x, corner.y);
  const pointFor = (turn: number): Vec2 => ({ x: centre.x + far * Math.cos(own + radians(turn)), y: centre.y + far * Math.sin(own + radians(turn)) });
  return {
    kind: "size", name: "turn", field: "outline.turn", quantity: "angle", value: outline.turn, point: pointFor(outline.turn), pointFor,
    valueAt: ({ x, y }) => {
      const turn = degrees(Math.atan2(y - centre.y, x - centre.x) - own);
      const nearest = turn + 360 * Math.round((outline.turn - turn) / 360);
      return Math.abs(nearest) > LIMITS.turn.max ? turn : nearest;
    },
    put: (turn) => ({ "outline.turn": turn }),
  };
}

/** Where an outline that is not turned is held to turn it, from its centre: its corner, or a point of a round end. */
function cornerOf({ shape, width, length }: Turned): Vec2 {
  if (shape === "rectangle") return { x: width / 2, y: length / 2 };
  const round = (Math.min(width, length) / 2) * Math.SQRT1_2;
  const straight = Math.abs(length - width) / 2;
  return length > width ? { x: round, y: straight + round } : { x: straight + round, y: round };
}

/** Half the extent across and along the axis. */
export function halfExtent(outline: Outline): { across: number; along: number } {
  if (outline.shape === "round") return { across: outline.diameter / 2, along: outline.diameter / 2 };
  const cos = Math.abs(Math.cos(radians(outline.turn))), sin = Math.abs(Math.sin(radians(outline.turn)));
  const round = outline.shape === "slot" ? Math.min(outline.width, outline.length) / 2 : 0;
  const w = outline.width / 2 - round, l = outline.length / 2 - round;
  return { across: w * cos + l * sin + round, along: l * cos + w * sin + round };
}
