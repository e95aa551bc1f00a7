import { useEffect } from "react";
import type { Step } from "../../drawing/steps/steps";
import { selectHeld } from "../store/select";
import { hold, useApp } from "../store/store";
import { readAddress, writeAddress } from "./address";
import { type Standing, useTeaching } from "./teaching";

export interface Lesson extends Standing {
  readonly steps: readonly Step[];
  readonly step: Step;
}

/** The steps of the job on the board and where they stand; null before the board is drawn. */
export function useLesson(): Lesson | null {
  const steps = useTeaching((state) => state.steps);
  const name = useTeaching((state) => state.step);
  const station = useApp(selectHeld);
  const index = Math.max(0, steps.findIndex((step) => step.name === name));
  const step = steps[index];
  return step ? { steps, step, index, station } : null;
}

/** Keeps the address and the lesson the same: a link opens its step and station, and every move is written into the address. */
export function useAddress(lesson: Lesson | null): void {
  const piece = useApp((state) => state.development.pieces[0]);
  const way = useTeaching((state) => state.way);
  useEffect(() => {
    const follow = () => {
      const asked = readAddress(window.location.hash);
      if (!asked) return;
      useTeaching.setState({ step: asked.step, way: asked.way, playing: false });
      const station = piece?.stations.findIndex(({ label }) => label === asked.station) ?? -1;
      if (station >= 0) {
        useTeaching.setState({ each: true });
        hold(station);
      }
    };
    follow();
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
    // Only once: a job put on the board later does not open the address again.
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the address is read when the lesson begins and when it changes
  }, []);
  const step = lesson?.step.name;
  const station = lesson?.station ?? null;
  const label = station === null ? null : (piece?.stations[station]?.label ?? null);
  useEffect(() => {
    if (step) history.replaceState(null, "", writeAddress({ step, station: label, way }));
  }, [step, label, way]);
}
