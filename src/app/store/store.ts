import { create } from "zustand";
import type { Development, Job } from "../../core/index";
import { attempt, make, without, type Change, type Draft, type Drafts, type Fault } from "./attempt";
import { createAutosave, type Kept } from "./autosave";
import { lookForEarlier } from "./earlier";
import { firstDevelopment } from "./firstDevelopment";
import { createHistory, wholeJob, type Gesture } from "./history";
import { words } from "../words/interface";

// What the screen is about: the last job that could be made, what is typed and not yet in it, and what is in hand.

export type Message =
  | { readonly kind: "unreadable-autosave" }
  | { readonly kind: "no-storage" }
  | { readonly kind: "open-elsewhere" }
  | { readonly kind: "refused"; readonly fault: Fault }
  | { readonly kind: "file"; readonly name: string; readonly fault: Fault }
  | { readonly kind: "set-aside"; readonly job: Job };

export interface AppState {
  readonly development: Development;
  readonly drafts: Drafts;
  /** Directions asked for in figures though they have a name. */
  readonly spelled: ReadonlySet<string>;
  /** Station kept in hand, and the one merely pointed at; indices into the stations of the first piece. */
  readonly held: number | null;
  readonly pointed: number | null;
  /** The clause in hand; the same names as in the drawing. */
  readonly clause: string | null;
  readonly message: Message | null;
  /** What undo would take back and redo make again, in words. */
  readonly undo: string | null;
  readonly redo: string | null;
}

const nothingInHand = { drafts: {}, spelled: new Set<string>(), held: null, pointed: null, clause: null };

let storageFails = false;
export const autosave = createAutosave({
  kept(whether) {
    // Said once, until the browser has kept something again.
    if (!whether && !storageFails) say({ kind: "no-storage" });
    storageFails = !whether;
  },
  left: () => void lookForEarlier(autosave.slot.key()),
});

export const useApp = create<AppState>()(() => beginning(autosave.first()));
const history = createHistory(useApp.getState().development.job);

function beginning(kept: Kept): AppState {
  const message: Message | null = kept.kind === "unreadable" ? { kind: "unreadable-autosave" } : kept.kind === "no-storage" ? { kind: "no-storage" } : null;
  return { development: kept.kind === "job" ? kept.development : firstDevelopment(), ...nothingInHand, message, undo: null, redo: null };
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

/** Keeps text that cannot be read as a quantity, with the reason. */
export function keepDraft(key: string, draft: Draft): void {
  useApp.setState(({ drafts }) => ({ drafts: { ...drafts, [key]: draft } }));
}

/** Gives up what was typed into a field. */
export function dropDraft(key: string): void {
  useApp.setState(({ drafts }) => (key in drafts ? { drafts: without(drafts, key) } : {}));
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

/** Takes the last step back; what it was, in words, or null when there is none. */
export function undo(): string | null {
  return goTo(history.undo());
}

/** Makes the step last taken back again; what it is, in words, or null when there is none. */
export function redo(): string | null {
  return goTo(history.redo());
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

/** Shows a direction in figures, or by its name again. */
export function spell(key: string, inFigures: boolean): void {
  useApp.setState(({ spelled }) => {
    const next = new Set(spelled);
    if (inFigures) next.add(key);
    else next.delete(key);
    return { spelled: next };
  });
}

export function say(message: Message | null): void {
  useApp.setState({ message });
}

/** Takes a station in hand, or puts it down. */
export function hold(station: number | null): void {
  useApp.setState({ held: station, pointed: null });
}

export function point(station: number | null): void {
  if (useApp.getState().pointed !== station) useApp.setState({ pointed: station });
}

export function takeClause(clause: string | null): void {
  if (useApp.getState().clause !== clause) useApp.setState({ clause });
}
