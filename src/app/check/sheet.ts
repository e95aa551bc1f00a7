// What stands in the fields of a check, as typed: the texts are the truth, so that nothing typed is ever lost.

export interface Sheet {
  /** "1:2": the scale the drawing was made at. */
  readonly scale: ScaleName;
  /** Equal spaces of the drawing; empty: as many as the job has. */
  readonly count: string;
  /** Where the drawing's numbering starts, degrees from the front; empty: at the seam. */
  readonly start: string;
  /** Which way it runs: as the pattern's, or the other way. */
  readonly along: "pattern" | "against";
  /** Allowed: mm on the paper, degrees; how the girth is to be found. */
  readonly tolerance: string;
  readonly angle: string;
  readonly girth: "exact" | "stepped" | "either";
  /** Full marks for the stretch-out and its spacing, the ordinates, the angles. */
  readonly marks: { readonly girth: string; readonly ordinates: string; readonly angles: string };
  /** What was read, by the key of its place. */
  readonly readings: Readonly<Record<string, string>>;
}

/** Scales of drawings: mm on the paper for one mm (ISO 5455, from memory). */
export const SCALES = { "1:1": 1, "1:2": 0.5, "1:5": 0.2, "1:10": 0.1, "2:1": 2, "5:1": 5 } as const;

export type ScaleName = keyof typeof SCALES;

export const emptySheet: Sheet = {
  scale: "1:1", count: "", start: "", along: "pattern", tolerance: "1 mm", angle: "1", girth: "exact",
  marks: { girth: "2", ordinates: "6", angles: "2" }, readings: {},
};

/** A sheet from what the browser kept; null for anything else. */
export function keptSheet(data: unknown): Sheet | null {
  if (typeof data !== "object" || data === null) return null;
  const { scale, count, start, along, tolerance, angle, girth, marks, readings } = data as Partial<Record<keyof Sheet, unknown>>;
  const texts = [count, start, tolerance, angle];
  if (!(typeof scale === "string" && scale in SCALES) || !texts.every((text) => typeof text === "string")) return null;
  if ((along !== "pattern" && along !== "against") || (girth !== "exact" && girth !== "stepped" && girth !== "either")) return null;
  if (!areTexts(readings) || !areTexts(marks) || !("girth" in marks && "ordinates" in marks && "angles" in marks)) return null;
  return data as Sheet;
}

function areTexts(data: unknown): data is Record<string, string> {
  return typeof data === "object" && data !== null && Object.values(data).every((text) => typeof text === "string");
}
