// What may be wrong with the ordinates: their datum, the end they are measured from, the scale, the curve between them.

import { PENALTY, type Suspicion, type SuspicionFrame, suspicion } from "./suspicion";

/** Scales of drawings, mm on the paper for one mm (ISO 5455, from memory). */
const SCALES = [10, 5, 2, 1, 0.5, 0.2, 0.1] as const;

/** A constant offset, heights from the other end, a scale mistake, a critical element missed. */
export function ordinateSuspicions(frame: SuspicionFrame): Suspicion[] {
  const from = frame.job.part.length;
  const offset: Suspicion = {
    decides: ["offset"], penalty: PENALTY.found, change: (work) => work, free: "offset", mistake: (found) => ({ kind: "datum", offset: found }),
  };
  return [
    offset,
    suspicion(["end"], { kind: "otherEnd", from }, (work) => ({ ...work, downFrom: from })),
    ...scaleSuspicions(frame),
    ...(["smooth", "straight"] as const).map((drawn) => suspicion(["between"], { kind: "critical", drawn }, (work) => ({ ...work, between: drawn }))),
  ];
}

function scaleSuspicions({ readings: { scale } }: SuspicionFrame): Suspicion[] {
  const factors = SCALES.map((other) => other / scale).filter((factor) => Math.abs(factor - 1) > 1e-9);
  const any: Suspicion = {
    decides: ["scale"], penalty: PENALTY.found, change: (work) => work, free: "factor",
    mistake: (found) => ({ kind: "scale", factor: found, ordinatesOnly: false }),
  };
  return [any, ...factors.flatMap((factor) => [
    suspicion(["scale"], { kind: "scale", factor, ordinatesOnly: false }, (work) => ({ ...work, ordinateFactor: factor, girthFactor: factor })),
    suspicion(["scale"], { kind: "scale", factor, ordinatesOnly: true }, (work) => ({ ...work, ordinateFactor: factor })),
  ])];
}
