// Prick points, match marks and the two arrows.

import type { Mark, Vec2 } from "../../core/index";
import { boxOfPoints, growBox } from "../box";
import { cellGrid } from "../cellGrid";
import type { Item } from "../display";
import { LETTERING } from "../lettering";
import { polygon, stroke } from "../strokes";
import type { CutSheet } from "./cutSheet";

/** Radius of the circle round a prick point, mm. */
export const PRICK = 0.8;

/** A match mark's height and half its width, mm. */
const HEIGHT = 4.5, HALF = 1.5;

/** Prick points nearer than this, mm, are one. */
const SAME = 0.05;

/** A circle round every place to be pricked through, once. */
export function prickItems(marks: readonly Mark[]): Item[] {
  const all = marks.flatMap((mark) => (mark.kind === "prick" ? [mark.at] : []));
  const drawn = cellGrid<Vec2>(boxOfPoints(all));
  return all.flatMap((centre): Item[] => {
    const near = growBox(boxOfPoints([centre]), SAME);
    if (drawn.some(near, ({ x, y }) => Math.hypot(x - centre.x, y - centre.y) < SAME)) return [];
    drawn.add(centre, boxOfPoints([centre]));
    return [{ kind: "circle", pen: "prick point", centre, radius: PRICK }];
  });
}

/** A triangle on the sheet with its point at the edge that meets another; half of it where the other half would lie off the sheet. */
export function matchItems(marks: readonly Mark[], sheet: CutSheet): Item[] {
  return marks.flatMap((mark): Item[] => {
    if (mark.kind !== "match") return [];
    const { at, into } = mark;
    const corner = (side: number): Vec2 => ({ x: at.x + HEIGHT * into.x - side * HALF * into.y, y: at.y + HEIGHT * into.y + side * HALF * into.x });
    const [left, right] = [corner(1), corner(-1)];
    if (sheet.holds(left) === sheet.holds(right)) return [polygon("sheet mark", [at, right, left])];
    const whole = sheet.holds(left) ? left : right;
    return [{ kind: "path", pen: "sheet mark", closed: false, segments: [{ kind: "line", from: at, to: whole }, { kind: "line", from: whole, to: corner(0) }] }];
  });
}

/** The arrow to the top end and the arrow of rolling, whose head points both ways. */
export function arrowItems(marks: readonly Mark[]): Item[] {
  return marks.flatMap((mark): Item[] => {
    if (mark.kind !== "top" && mark.kind !== "rolling") return [];
    const { from, to } = mark.line;
    const direction = Math.atan2(to.y - from.y, to.x - from.x);
    const head = (tip: Vec2, way: number): Item => ({ kind: "arrowhead", pen: "sheet mark", tip, direction: way, length: LETTERING });
    const heads = mark.kind === "top" ? [head(to, direction)] : [head(to, direction), head(from, direction + Math.PI)];
    return [stroke("sheet mark", from, to), ...heads];
  });
}
