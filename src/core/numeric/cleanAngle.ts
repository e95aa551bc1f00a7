// An angle that ought to be a round number of degrees, freed of its last wrong bits.

import { wrapTurn } from "./angle";

/** Millionths of a degree. */
const STEPS_PER_RADIAN = 180e6 / Math.PI;

/** The angle (radians) in [0, 2π), moved to the nearest whole millionth of a degree when it is within 1e-10 of a degree (1.7e-12 rad) of it. */
export function cleanAngle(theta: number): number {
  const steps = theta * STEPS_PER_RADIAN;
  const whole = Math.round(steps);
  return wrapTurn(Math.abs(steps - whole) < 1e-4 ? whole / STEPS_PER_RADIAN : theta);
}
