// A ruler to be checked against a real one before anything is cut.

import type { Vec2 } from "../core/index";
import type { Item } from "./display";
import { stroke } from "./strokes";

export interface RulerScale {
  /** Length of the ruler and of one division, mm. */
  readonly length: number;
  readonly division: number;
  /** Divisions from one longer tick to the next, and from one number to the next. */
  readonly middle: number;
  readonly numbered: number;
  /** What the number at a place (counted in divisions) reads. */
  readonly label: (divisions: number) => string;
}

/** 100 mm in millimetres. */
export const MILLIMETRES: RulerScale = { length: 100, division: 1, middle: 5, numbered: 10, label: (divisions) => String(divisions) };

/** 4 in in eighths. */
export const INCHES: RulerScale = { length: 101.6, division: 3.175, middle: 4, numbered: 8, label: (divisions) => `${divisions / 8}″` };

/** Ticks, mm. */
const SHORT = 1.5, MIDDLE = 2.5, LONG = 4;

/** Height of figures, mm: smaller than on a drawing, as on a rule. */
const FIGURES = 2.5;

/** A ruler from `at` to the right, ticks upward; or, `upright`, from `at` upward with ticks to the right. */
export function ruler(at: Vec2, scale: RulerScale, direction: "level" | "upright"): Item[] {
  const { length, division, middle, numbered, label } = scale;
  const point = (along: number, up: number): Vec2 => (direction === "level" ? { x: at.x + along, y: at.y + up } : { x: at.x + up, y: at.y + along });
  const count = Math.round(length / division);
  const ticks = Array.from({ length: count + 1 }, (_, i) => {
    const tick = i % numbered === 0 ? LONG : i % middle === 0 ? MIDDLE : SHORT;
    return stroke("ruler", point(i * division, 0), point(i * division, tick));
  });
  const numbers = Array.from({ length: Math.floor(count / numbered) + 1 }, (_, i): Item => {
    const foot = point(i * numbered * division, LONG + 0.8);
    return {
      kind: "text", pen: "lettering", text: label(i * numbered), height: FIGURES, align: direction === "level" ? "middle" : "start", turn: 0,
      at: direction === "level" ? foot : { x: foot.x, y: foot.y - FIGURES / 2 },
    };
  });
  return [stroke("ruler", point(0, 0), point(length, 0)), ...ticks, ...numbers];
}
