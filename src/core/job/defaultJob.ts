import { noExercise } from "./exerciseChoices";
import type { Job } from "./job";
import { CHOICES, LIMITS } from "./limits";

/** A new job to begin with: a plain pipe with one sloping end. A fresh object at each call. */
export function defaultJob(): Job {
  return {
    format: "flatwright-job",
    version: 2,
    title: "",
    note: "",
    units: CHOICES.units.default,
    part: {
      kind: "pipe",
      diameter: 100,
      basis: CHOICES.basis.default,
      thickness: LIMITS.thickness.default,
      length: 200,
      attitude: CHOICES.attitude.default,
      cuts: [{ id: "top", on: true, kind: "plane", end: "top", angle: 30, direction: 180, at: "axis", height: 140 }],
    },
    development: {
      seam: { at: CHOICES.namedSeam.default },
      stations: LIMITS.stations.default,
      critical: false,
      extra: [],
      face: CHOICES.face.default,
    },
    drawing: { projection: CHOICES.projection.default, sheetScale: null },
    fabrication: {
      purpose: CHOICES.purpose.default,
      surface: CHOICES.surface.default,
      kFactor: LIMITS.kFactor.default,
      paper: LIMITS.paper.default,
      hand: CHOICES.hand.default,
      material: CHOICES.material.default,
      density: null,
      gauge: null,
      quantity: LIMITS.quantity.default,
      seam: { kind: CHOICES.seamJoint.default, gap: LIMITS.rootGap.default },
      edges: { top: { kind: CHOICES.edgeFinish.default }, bottom: { kind: CHOICES.edgeFinish.default } },
      plates: { top: null, bottom: null },
    },
    marking: { tolerance: LIMITS.lengthTolerance.default, angle: LIMITS.angleTolerance.default, girth: CHOICES.girthRule.default, items: [] },
    readings: null,
    exercise: noExercise(),
  };
}
