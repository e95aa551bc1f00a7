import { hold, useApp } from "../store/store";
import { type Standing, moved, stationsOf, useTeaching } from "./teaching";

// The moves of a lesson, for buttons, keys and the player.

/** Goes on (1) or back (-1) by a step, or by a station where the step goes from one to the other. False past either end. */
export function move(by: 1 | -1): boolean {
  const { steps, each } = useTeaching.getState();
  const to = moved(standing(), by, steps, each);
  if (to) standAt(to);
  return to !== null;
}

/** Goes to the step with this index, at its beginning. */
export function jump(index: number): void {
  const { steps, each } = useTeaching.getState();
  standAt({ index, station: stationsOf(steps, index, each) > 0 ? 0 : standing().station });
}

/** Whether steps that can go from station to station; turned on, the step shown begins with its first. */
export function setEach(each: boolean): void {
  useTeaching.setState({ each });
  const { steps } = useTeaching.getState();
  if (each && standing().station === null && stationsOf(steps, standing().index, each) > 0) hold(0);
}

/** Plays from here, or from the beginning when the end is reached; or stops. */
export function play(playing: boolean): void {
  const { steps, each } = useTeaching.getState();
  if (playing && moved(standing(), 1, steps, each) === null) jump(0);
  useTeaching.setState({ playing });
}

function standing(): Standing {
  const { steps, step } = useTeaching.getState();
  return { index: Math.max(0, steps.findIndex(({ name }) => name === step)), station: useApp.getState().held };
}

function standAt({ index, station }: Standing): void {
  const step = useTeaching.getState().steps[index];
  if (!step) return;
  useTeaching.setState({ step: step.name });
  if (station !== useApp.getState().held) hold(station);
}
