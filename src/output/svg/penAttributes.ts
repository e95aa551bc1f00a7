// The one table from pen to SVG: class, width, dash, ends and hue.

import { PENS, type Pen, type PenName } from "../../drawing/pens";

export interface PenAttributes {
  readonly class: string;
  readonly fill: string;
  readonly stroke: string;
  readonly "stroke-width"?: string;
  readonly "stroke-dasharray"?: string;
  readonly "stroke-linecap"?: "butt" | "round";
  readonly "stroke-linejoin"?: "round";
}

const INK = "#000000";

/** Hues by role, for screens; each has at least 3:1 contrast on white. Print is black. */
const HUES: Readonly<Record<Pen["role"], string>> = {
  part: INK, construction: "#4a5a6a", annotation: INK, "in hand": "#d55e00", "true length": "#0072b2", sheet: INK,
};

/** Tones of the two sides of the sheet, both opaque, the inside in shadow; and of ink. */
const TONES = { inside: "#d9d9d9", outside: "#ffffff", ink: INK } as const;

/** "visible edge" becomes "pen-visible-edge". */
export function penClass(pen: PenName): string {
  return `pen-${pen.replaceAll(" ", "-")}`;
}

/** Presentation attributes of lines of a pen, in user units of one sheet mm. `colour` false: all in black. */
export function penAttributes(pen: PenName, colour = true): PenAttributes {
  const { width, dash, role }: Pen = PENS[pen];
  return {
    class: penClass(pen), fill: "none", stroke: colour ? HUES[role] : INK, "stroke-width": String(width),
    ...(dash.length > 0 && { "stroke-dasharray": dash.join(" ") }),
    "stroke-linecap": dash.length > 0 ? "butt" : "round", "stroke-linejoin": "round",
  };
}

/** Presentation attributes of what is filled with a pen's ink: letters and arrowheads. */
export function inkAttributes(pen: PenName, colour = true): PenAttributes {
  const { role }: Pen = PENS[pen];
  return { class: penClass(pen), fill: colour ? HUES[role] : INK, stroke: "none" };
}

/** Presentation attributes of a filled surface. */
export function surfaceAttributes(side: keyof typeof TONES): Omit<PenAttributes, "stroke"> & { readonly "fill-rule": "evenodd" } {
  return { class: `surface-${side}`, fill: TONES[side], "fill-rule": "evenodd" };
}
