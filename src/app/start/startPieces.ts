import type { Cut, Job } from "../../core/index";
import type { Sight } from "../../drawing/pictorial/pictorialSight";
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
  const wholeUp = (value: number) => Number((Math.ceil(value / step - 1e-9) * step).toPrecision(12));
  return { ...job, part: { ...job.part, cuts: cutsOf(piece, job.part.diameter, job.part.length, whole, wholeUp) } };
}

function cutsOf(piece: StartPiece, diameter: number, length: number, whole: (value: number) => number, wholeUp: (value: number) => number): Cut[] {
  const plane = { on: true, kind: "plane" } as const;
  const shaped = { on: true, kind: "shaped", end: "bottom", direction: 0 } as const;
  switch (piece) {
    case "slant":
      return [{ ...plane, id: "slant", end: "top", angle: 35, direction: 180, at: "high", height: length }];
    case "roof":
      return [{ ...plane, id: "roof", end: "bottom", angle: 30, direction: 180, at: "low", height: 0 }];
    case "branch":
      return [{ id: "branch", on: true, kind: "opening", outline: { shape: "round", diameter: whole(diameter * 0.45) }, direction: 270, height: whole(length * 0.4), offset: 0, through: "near" }];
    case "saddle": {
      // On a pipe half as wide again; the whole depth of the hollow, so that no flat is left at the sides.
      const radius = whole(diameter * 0.75);
      return [{ ...shaped, id: "saddle", profile: { shape: "hollow", radius, centre: 0, height: wholeUp(radius - Math.sqrt(radius ** 2 - diameter ** 2 / 4)) } }];
    }
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
