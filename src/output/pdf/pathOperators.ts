// Lines, circles, arrowheads and surfaces as PDF operators, in mm with y up as on the sheet (PDF 32000-1:2008, 8.5).

import type { Segment, Vec2 } from "../../core/index";
import type { ArrowheadItem, CircleItem, PathItem, SurfaceItem } from "../../drawing/display";
import { arcCubics } from "./arcCubics";
import { numberText } from "./numberText";

/** How far a drawn arc may stray, mm. */
export const ARC_TOLERANCE = 0.0005;

/** Half the width of an arrowhead over its length: about 15 degrees in all. */
const ARROW_HALF_WIDTH = Math.tan((7.5 * Math.PI) / 180);

/** Grey of the two sides of the sheet, the inside in shadow; and of ink. */
const TONES = { inside: 0.85, outside: 1, ink: 0 } as const;

/** A stroked path; "" for one without segments. */
export function pathOperators({ segments, closed }: Pick<PathItem, "segments" | "closed">): string {
  const [first] = segments;
  return first ? `${pair(first.from)} m ${segments.map(step).join(" ")} ${closed ? "s" : "S"}` : "";
}

/** A stroked circle. */
export function circleOperators({ centre, radius }: CircleItem): string {
  const from = { x: centre.x + radius, y: centre.y };
  return pathOperators({ segments: [{ kind: "arc", from, to: from, centre, anticlockwise: true }], closed: true });
}

/** A filled arrowhead. */
export function arrowheadOperators({ tip, direction, length }: ArrowheadItem): string {
  const cos = Math.cos(direction), sin = Math.sin(direction);
  const corner = (side: number): Vec2 => ({
    x: tip.x - length * cos - side * length * ARROW_HALF_WIDTH * sin, y: tip.y - length * sin + side * length * ARROW_HALF_WIDTH * cos,
  });
  return `${polygon([tip, corner(1), corner(-1)])} f`;
}

/** A surface in its tone, filled by the even-odd rule; black ink afterwards. */
export function surfaceOperators({ side, loops }: SurfaceItem): string {
  return `${TONES[side]} g ${loops.map(polygon).join(" ")} f* 0 g`;
}

function polygon(points: readonly Vec2[]): string {
  return `${points.map((point, i) => `${pair(point)} ${i === 0 ? "m" : "l"}`).join(" ")} h`;
}

function step(segment: Segment): string {
  switch (segment.kind) {
    case "line":
      return `${pair(segment.to)} l`;
    case "cubic":
      return `${pair(segment.c1)} ${pair(segment.c2)} ${pair(segment.to)} c`;
    case "arc":
      return arcCubics(segment, ARC_TOLERANCE).map(step).join(" ");
  }
}

function pair({ x, y }: Vec2): string {
  return `${numberText(x)} ${numberText(y)}`;
}
