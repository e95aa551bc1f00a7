// The plainest items: a straight line, a chain of points.

import type { Vec2 } from "../core/index";
import type { PathItem, Ref } from "./display";
import type { PenName } from "./pens";

/** A straight line. */
export function stroke(pen: PenName, from: Vec2, to: Vec2, ref?: Ref): PathItem {
  return { kind: "path", pen, segments: [{ kind: "line", from, to }], closed: false, ...(ref && { ref }) };
}

/** Straight lines through corners and back to the first. */
export function polygon(pen: PenName, corners: readonly Vec2[]): PathItem {
  const segments = corners.flatMap((from, i) => {
    const to = corners[i + 1] ?? corners[0];
    return to ? [{ kind: "line" as const, from, to }] : [];
  });
  return { kind: "path", pen, segments, closed: true };
}

/** An arc about `centre` from one angle (radians) to another: anticlockwise when `to` is the greater. */
export function arcStroke(pen: PenName, centre: Vec2, radius: number, from: number, to: number, ref?: Ref): PathItem {
  const at = (angle: number) => ({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) });
  return {
    kind: "path", pen, closed: false, ...(ref && { ref }),
    segments: [{ kind: "arc", from: at(from), to: at(to), centre, anticlockwise: to > from }],
  };
}
