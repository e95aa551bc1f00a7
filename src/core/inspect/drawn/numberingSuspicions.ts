// What may be wrong with the numbering: where it starts, which way it runs, a station slipped.

import { radians } from "../../numeric/angle";
import { PENALTY, type Suspicion, type SuspicionFrame, suspicion } from "./suspicion";

/** With more stations than this only half and quarter turns of the seam and no slips are looked for. */
const MANY = 48;

/** The seam turned, the order reversed, an ordinate skipped or taken twice. */
export function numberingSuspicions({ readings: { count } }: SuspicionFrame): Suspicion[] {
  const reversed = suspicion(["towards"], { kind: "reversed" }, (work) => ({ ...work, towards: work.towards > 0 ? -1 : 1 }));
  return [reversed, ...turnsOf(count).map(seamTurned), ...(count > MANY ? [] : slips(count))];
}

/** Degrees: quarter and half turns, then one for every other station. */
function turnsOf(count: number): number[] {
  const quarters = [180, 90, 270];
  const stations = Array.from({ length: count > MANY ? 0 : count - 1 }, (_, k) => (360 * (k + 1)) / count);
  return [...quarters, ...stations.filter((turn) => !quarters.includes(turn))];
}

function seamTurned(turn: number): Suspicion {
  const penalty = turn % 90 === 0 ? PENALTY.usual : PENALTY.found;
  return suspicion(["start"], { kind: "seam", turn }, (work) => ({ ...work, start: work.start + work.towards * radians(turn) }), penalty);
}

/** A slip near the end moves too little to be told from a misreading. */
function slips(count: number): Suspicion[] {
  return Array.from({ length: count - 2 }, (_, k) => k + 1).flatMap((at) => [
    suspicion(["slip"], { kind: "skipped", at }, (work) => ({ ...work, slip: { at, by: 1 } }), PENALTY.found),
    suspicion(["slip"], { kind: "repeated", at }, (work) => ({ ...work, slip: { at, by: -1 } }), PENALTY.found),
  ]);
}
