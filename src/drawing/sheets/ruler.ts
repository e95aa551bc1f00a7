// A ruler to be checked against a real one before anything is cut: millimetres on one side of its line, inches on the other.

import type { Vec2 } from "../../core/index";
import type { Item } from "../display";
import { stroke } from "../strokes";

/** How far ruler and figures reach to either side of the line, mm. */
export const RULER_REACH = 6.5;

/** The words stand this far past the end of the mm, mm; the whole takes no more than `RULER_TAIL` there. */
const WORD = 4.2;
export const RULER_TAIL = 12;

const INCH = 25.4;

/** Ticks, mm. */
const SHORT = 1.5, MIDDLE = 2.3, LONG = 3.2;

/** Height of figures, mm: smaller than on a drawing, as on a rule. */
const FIGURES = 2.5;

/** Between tick and figure. */
const AIR = 0.7;

/**
 * A ruler of `length` mm (whole tens) and as many whole inches as lie within it, so that its line ends at its last mm; its zero at `at`: level to the right, mm above; upright
 * upwards, mm to the left.
 */
export function ruler(at: Vec2, length: number, direction: "level" | "upright"): Item[] {
  const level = direction === "level";
  const point = (along: number, side: number): Vec2 => (level ? { x: at.x + along, y: at.y + side } : { x: at.x - side, y: at.y + along });
  const inches = Math.floor(length / INCH);
  const figure = (text: string, along: number, side: number, align: "start" | "middle"): Item => ({
    kind: "text", pen: "lettering", text, height: FIGURES, align, turn: level ? 0 : Math.PI / 2, at: point(along, side),
  });
  const marks = (count: number, division: number, tick: (i: number) => number) =>
    Array.from({ length: count + 1 }, (_, i) => stroke("ruler", point(i * division, 0), point(i * division, tick(i))));
  const foot = -LONG - AIR - FIGURES;
  return [
    stroke("ruler", point(0, 0), point(length, 0)),
    ...marks(length, 1, (i) => (i % 10 === 0 ? LONG : i % 5 === 0 ? MIDDLE : SHORT)),
    ...marks(inches * 8, INCH / 8, (i) => -(i % 8 === 0 ? LONG : i % 4 === 0 ? MIDDLE : SHORT)),
    ...Array.from({ length: length / 10 + 1 }, (_, i) => figure(String(10 * i), 10 * i, LONG + AIR, "middle")),
    ...Array.from({ length: inches + 1 }, (_, i) => figure(String(i), i * INCH, foot, "middle")),
    figure("mm", length + WORD, LONG + AIR, "start"),
    figure("in", length + WORD, foot, "start"),
  ];
}

/** The longest ruler, in whole tens up to `most`, that leaves `rest` of the room (all mm); 0 when none does. */
export function rulerLength(room: number, most: number, rest: number): number {
  return Math.max(0, Math.min(most, Math.floor((room - rest) / 10) * 10));
}
