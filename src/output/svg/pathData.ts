// Path items and arrowheads as the `d` of an SVG path. The sheet's y runs up, SVG's down: y changes its sign, nothing else.

import { type Segment, type Vec2, arcSweep, segmentPoint } from "../../core/index";
import type { ArrowheadItem, PathItem, SurfaceItem } from "../../drawing/display";
import { roundNumber } from "./roundNumber";

/** Half the width of an arrowhead over its length: about 15 degrees in all. */
const ARROW_HALF_WIDTH = Math.tan((7.5 * Math.PI) / 180);

/** The `d` attribute of a path; arcs stay arcs, a whole circle becomes two. */
export function pathData({ segments, closed }: Pick<PathItem, "segments" | "closed">): string {
  const [first] = segments;
  if (!first) return "";
  const steps = segments.map((segment, i) => (closed && i === segments.length - 1 && segment.kind === "line" ? "" : step(segment)));
  return [`M${pair(first.from)}`, ...steps, ...(closed ? ["Z"] : [])].filter((part) => part !== "").join("");
}

/** The `d` attribute of an arrowhead's outline. */
export function arrowheadData({ tip, direction, length }: ArrowheadItem): string {
  const cos = Math.cos(direction), sin = Math.sin(direction);
  const corner = (side: number): Vec2 => ({
    x: tip.x - length * cos - side * length * ARROW_HALF_WIDTH * sin, y: tip.y - length * sin + side * length * ARROW_HALF_WIDTH * cos,
  });
  return `M${pair(tip)}L${pair(corner(1))}L${pair(corner(-1))}Z`;
}

/** The `d` attribute of a surface's loops, to be filled by the even-odd rule. */
export function surfaceData({ loops }: SurfaceItem): string {
  return loops.map((loop) => `M${loop.map(pair).join("L")}Z`).join("");
}

function step(segment: Segment): string {
  switch (segment.kind) {
    case "line":
      return `L${pair(segment.to)}`;
    case "cubic":
      return `C${pair(segment.c1)} ${pair(segment.c2)} ${pair(segment.to)}`;
    case "arc": {
      const { sweep, radius } = arcSweep(segment);
      const whole = Math.abs(sweep) > 2 * Math.PI - 1e-3;
      const arc = (to: Vec2, turn: number) =>
        `A${roundNumber(radius)} ${roundNumber(radius)} 0 ${Math.abs(turn) > Math.PI ? 1 : 0} ${turn > 0 ? 0 : 1} ${pair(to)}`;
      return whole ? arc(segmentPoint(segment, 0.5), sweep / 2) + arc(segment.to, sweep / 2) : arc(segment.to, sweep);
    }
  }
}

function pair({ x, y }: Vec2): string {
  return `${roundNumber(x)} ${roundNumber(-y)}`;
}
