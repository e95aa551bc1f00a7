import { noExercise, type Cut, type FabricationChoices, type Job, type Leg, type PipePart, type Profile } from "../../src/core/index";

/** Jobs as plain data, spelled out here so that the tests do not rest on the core's own defaults. Lengths in mm, angles in degrees. */

export type Seam = Job["development"]["seam"];
export type PlaneCut = Extract<Cut, { kind: "plane" }>;
export type ShapedCut = Extract<Cut, { kind: "shaped" }>;
export type OpeningCut = Extract<Cut, { kind: "opening" }>;
export type Outline = OpeningCut["outline"];
export type { Cut, Job, Leg, Profile };

export interface PipeDescription {
  readonly diameter: number;
  readonly length: number;
  readonly cuts?: readonly Cut[];
  readonly basis?: PipePart["basis"];
  readonly thickness?: number;
  readonly attitude?: PipePart["attitude"];
  readonly stations?: number;
  readonly seam?: Seam;
  readonly critical?: boolean;
  readonly extra?: readonly number[];
  readonly face?: Job["development"]["face"];
  readonly fabrication?: Partial<FabricationChoices>;
}

/** A whole job about one pipe; what is left out is: mean diameter, no thickness, upright, no cuts, 12 stations, seam in front, outside up, one blank of steel without allowances. */
export function pipeJob(pipe: PipeDescription): Job {
  return {
    format: "flatwright-job", version: 2, title: "", note: "", units: "mm",
    part: {
      kind: "pipe", diameter: pipe.diameter, basis: pipe.basis ?? "mean", thickness: pipe.thickness ?? 0, length: pipe.length,
      attitude: pipe.attitude ?? "upright", cuts: [...(pipe.cuts ?? [])],
    },
    development: {
      seam: pipe.seam ?? { at: "front" }, stations: pipe.stations ?? 12, critical: pipe.critical ?? false,
      extra: [...(pipe.extra ?? [])], face: pipe.face ?? "outside",
    },
    drawing: { projection: "first", sheetScale: null },
    fabrication: {
      purpose: "blank", surface: "mean", kFactor: 0.5, paper: 0, hand: "described", material: "steel", density: null, gauge: null, quantity: 1,
      seam: { kind: "butt", gap: 0 }, edges: { top: { kind: "none" }, bottom: { kind: "none" } }, plates: { top: null, bottom: null },
      ...pipe.fabrication,
    },
    marking: { tolerance: 1, angle: 1, girth: "exact", items: [] },
    readings: null,
    exercise: noExercise(),
  };
}

/** A plane through the top end unless said otherwise: square, highest in front, its height taken on the axis. */
export function planeCut(cut: Partial<Omit<PlaneCut, "kind">> & { readonly height: number }): PlaneCut {
  return { kind: "plane", id: "plane", on: true, end: "top", angle: 0, direction: 0, at: "axis", ...cut };
}

/** A shaped top end seen from the front, unless said otherwise. */
export function shapedCut(profile: Profile, cut: Partial<Omit<ShapedCut, "kind" | "profile">> = {}): ShapedCut {
  return { kind: "shaped", id: "shaped", on: true, end: "top", direction: 0, profile, ...cut };
}

/** A central opening through the near wall in front, unless said otherwise. */
export function openingCut(outline: Outline, cut: Partial<Omit<OpeningCut, "kind" | "outline">> & { readonly height: number }): OpeningCut {
  return { kind: "opening", id: "opening", on: true, outline, direction: 0, offset: 0, through: "near", ...cut };
}
