// What does a line mean? One table: every meaning a drawing uses, its width and its dashes, following the conventions of
// ISO 128 for line group 0.5: wide 0.5 mm, narrow 0.25 mm; dash 12 widths, long dash 24, gap 3.

/** Line widths in mm on the sheet. */
const WIDE = 0.5;
const NARROW = 0.25;
const FRAME = 0.7;

/** Of the construction that is left standing under a finished drawing: one width of ISO 128 below the narrow one. */
const FAINT = 0.18;

const GAP = 3 * NARROW;
const DASH = 12 * NARROW;
const SHORT = 6 * NARROW;
const LONG = 24 * NARROW;
const DOT = NARROW;

export interface Pen {
  /** Line width in mm on the sheet; for lettering the width of its stroke. */
  readonly width: number;
  /** Dash, gap, dash, gap … in mm on the sheet; empty for a continuous line. */
  readonly dash: readonly number[];
  /** What the pen draws. A hue, if a format gives any, goes by this and only helps; width and dash carry the meaning. */
  readonly role: "part" | "construction" | "annotation" | "in hand" | "true length" | "sheet";
}

export const PENS = {
  "visible edge": { width: WIDE, dash: [], role: "part" },
  "hidden edge": { width: NARROW, dash: [DASH, GAP], role: "part" },
  contour: { width: WIDE, dash: [], role: "part" },
  "centre line": { width: NARROW, dash: [LONG, GAP, DOT, GAP], role: "construction" },
  seam: { width: NARROW, dash: [], role: "part" },
  outline: { width: WIDE, dash: [], role: "part" },
  opening: { width: WIDE, dash: [], role: "part" },
  "bend line": { width: NARROW, dash: [], role: "part" },
  slit: { width: WIDE, dash: [], role: "part" },
  "seam line": { width: NARROW, dash: [DASH, GAP], role: "part" },
  "quarter line": { width: NARROW, dash: [LONG, GAP, DOT, GAP], role: "construction" },
  "station tick": { width: NARROW, dash: [], role: "construction" },
  "prick point": { width: NARROW, dash: [], role: "part" },
  "sheet mark": { width: NARROW, dash: [], role: "annotation" },
  "stretch-out": { width: NARROW, dash: [], role: "construction" },
  station: { width: NARROW, dash: [], role: "construction" },
  "extra station": { width: NARROW, dash: [SHORT, GAP], role: "construction" },
  projection: { width: NARROW, dash: [], role: "construction" },
  faint: { width: FAINT, dash: [], role: "construction" },
  "smooth curve": { width: NARROW, dash: [SHORT, GAP], role: "annotation" },
  "true edge": { width: NARROW, dash: [DASH, GAP], role: "part" },
  "tolerance line": { width: NARROW, dash: [], role: "part" },
  dimension: { width: NARROW, dash: [], role: "annotation" },
  "station in hand": { width: WIDE, dash: [], role: "in hand" },
  "hidden station in hand": { width: NARROW, dash: [DASH, GAP], role: "in hand" },
  "true length": { width: WIDE, dash: [], role: "true length" },
  lettering: { width: 0.35, dash: [], role: "annotation" },
  frame: { width: FRAME, dash: [], role: "sheet" },
  ruler: { width: NARROW, dash: [], role: "sheet" },
  trim: { width: NARROW, dash: [SHORT, GAP], role: "sheet" },
  "match mark": { width: NARROW, dash: [], role: "sheet" },
} as const satisfies Record<string, Pen>;

export type PenName = keyof typeof PENS;
