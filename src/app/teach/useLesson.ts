import { useEffect, useState } from "react";
import { writeJobText } from "../../core/index";
import type { Step } from "../../drawing/steps/steps";
import { fetchChanges, sayNotFetched } from "../store/changing";
import { selectHeld, selectPiece } from "../store/select";
import { hold, say, useApp } from "../store/store";
import { teachWords as said } from "../words/teach";
import { readAddress, writeAddress } from "./address";
import { unpackJob } from "./packedJob";
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

/** Keeps the address and the lesson the same: a link opens its job, step and station, and every move is written into the address. */
export function useAddress(lesson: Lesson | null): void {
  const piece = useApp(selectPiece);
  const way = useTeaching((state) => state.way);
  const [opened, setOpened] = useState(false);
  useEffect(() => {
    const follow = () => void openAddress(window.location.hash).then(() => setOpened(true));
    follow();
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
  const step = lesson?.step.name;
  const station = lesson?.station ?? null;
  const label = station === null ? null : (piece?.stations[station]?.label ?? null);
  useEffect(() => {
    if (opened && step) history.replaceState(null, "", writeAddress({ step, station: label, way, job: null }));
  }, [opened, step, label, way]);
}

/** Goes where an address asks; its job, when it carries another than the one on the board, sets that one aside. */
async function openAddress(hash: string): Promise<void> {
  const asked = readAddress(hash);
  if (!asked) return;
  if (asked.job !== null) await openJob(asked.job);
  useTeaching.setState({ step: asked.step, way: asked.way, playing: false });
  const station = useApp.getState().development.pieces[0]?.stations.findIndex(({ label }) => label === asked.station) ?? -1;
  if (station < 0) return;
  useTeaching.setState({ each: true });
  hold(station);
}

async function openJob(packed: string): Promise<void> {
  const job = await unpackJob(packed);
  if (!job) return say({ kind: "file", name: said.linkedJob, fault: { kind: "problem", problem: { code: "not-a-job", field: "" } } });
  if (writeJobText(job) === writeJobText(useApp.getState().development.job)) return;
  await fetchChanges().then((by) => by.replaceJob(job, said.openLink), sayNotFetched);
}
