// The symbol that tells first from third angle: a frustum of large ⌀10, small ⌀5 and length 10 with its end view, whose circles stand
// beside the large end in first angle, beside the small end in third.

import type { Vec2 } from "../core/index";
import type { Item } from "./display";
import { polygon, stroke } from "./strokes";

const LARGE = 5, SMALL = 2.5, LENGTH = 10;

/** Between the frustum and the circles, and how far centre lines run past, mm at scale 1. */
const BETWEEN = 5, PAST = 1.5;

/** The symbol with the middle of its frustum at `at`, mm; its large end to the left in third angle, to the right in first. */
export function projectionSymbol(projection: "first" | "third", at: Vec2, scale = 1): Item[] {
  const point = (x: number, y: number): Vec2 => ({ x: at.x + scale * x, y: at.y + scale * y });
  const large = projection === "first" ? LENGTH / 2 : -LENGTH / 2;
  const circles = LENGTH / 2 + BETWEEN + LARGE;
  return [
    polygon("visible edge", [point(large, -LARGE), point(large, LARGE), point(-large, SMALL), point(-large, -SMALL)]),
    { kind: "circle", pen: "visible edge", centre: point(circles, 0), radius: scale * LARGE },
    { kind: "circle", pen: "visible edge", centre: point(circles, 0), radius: scale * SMALL },
    stroke("centre line", point(-LENGTH / 2 - PAST, 0), point(LENGTH / 2 + PAST, 0)),
    stroke("centre line", point(circles - LARGE - PAST, 0), point(circles + LARGE + PAST, 0)),
    stroke("centre line", point(circles, -LARGE - PAST), point(circles, LARGE + PAST)),
  ];
}
