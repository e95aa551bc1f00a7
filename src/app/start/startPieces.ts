import type { Cut, Job } from "../../core/index";
import type { Sight } from "../../drawing/pictorialSight";
import type { startWords } from "../words/start";

export type StartPiece = keyof typeof startWords.pieces;

/** The pieces one can begin with, in the order they are offered. */
export const startPieces: readonly StartPiece[] = ["slant", "roof", "branch", "saddle", "mitres", "ridge"];

/** From where each shows best what is cut: a slope from its side, a shaped foot from before it, both from little above. */
export const seenFrom: Readonly<Record<StartPiece, Sight>> = {
  slant: { turn: -1.05, tilt: 0.45 },
  roof: { turn: -1.25, tilt: 0.25 },
  branch: { turn: -0.9, tilt: 0.4 },
  saddle: { turn: -0.25, tilt: 0.25 },
  mitres: { turn: -1.25, tilt: 0.25 },
  ridge: { turn: -0.25, tilt: 0.25 },
};

const quarterInch = 25.4 / 4;

/** The job with the cuts of this piece, sized to sit well on its pipe, in whole millimetres or quarters of an inch. */
export function begun(job: Job, piece: StartPiece): Job {
  const step = job.units === "inch" ? quarterInch : 1;
  const whole = (value: number) => Number((Math.max(1, Math.round(value / step)) * step).toPrecision(12));
  return { ...job, part: { ...job.part, cuts: cutsOf(piece, job.part.diameter, job.part.length, whole) } };
}

function cutsOf(piece: StartPiece, diameter: number, length: number, whole: (value: number) => number): Cut[] {
  const plane = { on: true, kind: "plane" } as const;
  const shaped = { on: true, kind: "shaped", end: "bottom", direction: 0 } as const;
  switch (piece) {
    case "slant":
      return [{ ...plane, id: "slant", end: "top", angle: 35, direction: 180, at: "high", height: length }];
    case "roof":
      return [{ ...plane, id: "roof", end: "bottom", angle: 30, direction: 180, at: "low", height: 0 }];
    case "branch":
      return [{ id: "branch", on: true, kind: "opening", outline: { shape: "round", diameter: whole(diameter * 0.45) }, direction: 270, height: whole(length * 0.4), offset: 0, through: "near" }];
    case "saddle":
      // A pipe half as wide again: it leaves 0.19 of the diameter standing at the sides.
      return [{ ...shaped, id: "saddle", profile: { shape: "hollow", radius: whole(diameter * 0.75), centre: 0, height: whole(diameter * 0.19) } }];
    case "mitres": {
      const rise = whole((diameter / 2) * Math.tan(Math.PI / 8));
      return [
        { ...plane, id: "upper-mitre", end: "top", angle: 22.5, direction: 180, at: "axis", height: length - rise },
        { ...plane, id: "lower-mitre", end: "bottom", angle: 22.5, direction: 0, at: "axis", height: rise },
      ];
    }
    case "ridge":
      return [{ ...shaped, id: "ridge", profile: { shape: "vee", angle: 110, centre: 0, height: whole(diameter / 2 / Math.tan((55 * Math.PI) / 180)) } }];
  }
}
