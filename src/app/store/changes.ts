import { defaultJob, type Development, type Job } from "../../core/index";
import { patternAllowances } from "../../drawing/pattern/patternAllowances";
import { useAllowances } from "../board/allowances";
import { afterPress } from "../screen/afterPress";
import { words } from "../words/interface";
import { attempt, make, type Change, type Fault } from "./attempt";
import { createAutosave } from "./autosave";
import { lookForEarlier } from "./earlier";
import { createHistory, wholeJob, type Gesture } from "./history";
import { nothingInHand, say, useApp, type AppState } from "./store";
import { without } from "./without";

// Everything that changes the job: made when it can be, kept in the browser, and taken back again by undo.

let storageFails = false;
export const autosave = createAutosave({
  kept(whether) {
    // Said once, until the browser has kept something again.
    if (!whether && !storageFails) say({ kind: "no-storage" });
    storageFails = !whether;
  },
  left: () => afterPress(() => void lookForEarlier(autosave.slot.key())),
});

let history = createHistory(useApp.getState().development.job);

/** Begins the life of this page: with the work kept for it on the board, if it is to be taken up. */
export function begin(takeUp: boolean): void {
  useAllowances.setState({ of: patternAllowances });
  if (takeUp) takeUpKept();
  window.addEventListener("pagehide", leave);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") autosave.flush();
  });
  void settleIn();
}

function takeUpKept(): void {
  const kept = autosave.first();
  if (kept.kind === "unreadable") say({ kind: "unreadable-autosave" });
  if (kept.kind === "no-storage") say({ kind: "no-storage" });
  if (kept.kind !== "job") return;
  useApp.setState({ development: kept.development });
  history = createHistory(kept.development.job);
}

async function settleIn(): Promise<void> {
  const { slot } = autosave;
  if (await slot.claim()) say({ kind: "open-elsewhere" });
  if (slot.hasOthers()) await lookForEarlier(slot.key());
}

function leave(): void {
  // What stands in a field is made a change, as when the field is left.
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  autosave.flush();
}

/**
 * Makes a change typed into the field of this key; if it cannot be made, the text stays as a draft with its reason.
 * `what` names it for undo; changes of one gesture are undone together.
 */
export function commit(key: string, text: string, change: Change, what: string, gesture: Gesture | null = null): void {
  const { development, drafts } = useApp.getState();
  const tried = attempt(development.job, drafts, key, text, change);
  if (!tried.development) return useApp.setState({ drafts: tried.drafts });
  history.record({ job: tried.development.job, what, field: key }, gesture);
  settle(tried.development, { drafts: tried.drafts });
}

/** Makes a change that no field holds (adding, removing, switching); a refusal is said in the banner. `what` names it for undo. */
export function change(to: Change, what: string): boolean {
  const made = make(to(useApp.getState().development.job));
  if (!made.ok) return refuse(made.fault);
  history.record({ job: made.development.job, what, field: null }, null);
  const { message } = useApp.getState();
  settle(made.development, { message: message?.kind === "refused" ? null : message });
  return true;
}

/** Puts another job on the board; the former one is set aside and can be brought back. `what` names it for undo. */
export function replaceJob(job: Job, what: string = words.verbs.open): boolean {
  const before = useApp.getState().development.job;
  const made = make(job);
  if (!made.ok) return refuse(made.fault);
  history.record({ job: made.development.job, what, field: wholeJob }, null);
  settle(made.development, { ...nothingInHand, message: { kind: "set-aside", job: before } }, autosave.keepInstead);
  return true;
}

/** Puts a new job on the board: a pipe with nothing cut from it yet. */
export function newJob(): void {
  const job = defaultJob();
  replaceJob({ ...job, part: { ...job.part, cuts: [] } }, words.verbs.new);
}

/** Takes the last step back; what it was, in words, or null when there is none. */
export function undo(): string | null {
  return goTo(history.undo());
}

/** Makes the step last taken back again; what it is, in words, or null when there is none. */
export function redo(): string | null {
  return goTo(history.redo());
}

/** Takes back a gesture that is given up, as if it had never been. */
export function abandon(gesture: Gesture): void {
  goTo(history.abandon(gesture));
}

function goTo(found: ReturnType<typeof history.undo>): string | null {
  if (!found) return null;
  const made = make(found.job);
  if (!made.ok) return null;
  const { drafts } = useApp.getState();
  const { what, field } = found.step;
  settle(made.development, field === wholeJob ? { ...nothingInHand, message: null } : field === null ? {} : { drafts: without(drafts, field) });
  return what;
}

function refuse(fault: Fault): false {
  say({ kind: "refused", fault });
  return false;
}

function settle(development: Development, rest: Partial<AppState>, keep = autosave.keep): void {
  const stations = development.pieces[0]?.stations.length ?? 0;
  const within = (station: number | null) => (station !== null && station < stations ? station : null);
  useApp.setState((state) => ({ development, held: within(state.held), pointed: within(state.pointed), ...rest, ...history.next() }));
  keep(development.job);
}

