import { create } from "zustand";
import type { Development, Job } from "../../core/index";
import { attempt, make, without, type Change, type Draft, type Drafts, type Fault } from "./attempt";
import { keepJob, keptJob, type Kept } from "./autosave";
import { firstDevelopment } from "./firstDevelopment";

// What the screen is about: the last job that could be made, what is typed and not yet in it, and what is in hand.

export type Message =
  | { readonly kind: "unreadable-autosave" }
  | { readonly kind: "no-storage" }
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
}

const nothingInHand = { drafts: {}, spelled: new Set<string>(), held: null, pointed: null, clause: null };

export const useApp = create<AppState>()(() => beginning(keptJob()));

function beginning(kept: Kept): AppState {
  const message: Message | null = kept.kind === "unreadable" ? { kind: "unreadable-autosave" } : kept.kind === "no-storage" ? { kind: "no-storage" } : null;
  return { development: kept.kind === "job" ? kept.development : firstDevelopment(), ...nothingInHand, message };
}

/** Makes a change typed into the field of this key; if it cannot be made, the text stays as a draft with its reason. */
export function commit(key: string, text: string, change: Change): void {
  const { development, drafts } = useApp.getState();
  const tried = attempt(development.job, drafts, key, text, change);
  if (tried.development) settle(tried.development, { drafts: tried.drafts });
  else useApp.setState({ drafts: tried.drafts });
}

/** Keeps text that cannot be read as a quantity, with the reason. */
export function keepDraft(key: string, draft: Draft): void {
  useApp.setState(({ drafts }) => ({ drafts: { ...drafts, [key]: draft } }));
}

/** Gives up what was typed into a field. */
export function dropDraft(key: string): void {
  useApp.setState(({ drafts }) => (key in drafts ? { drafts: without(drafts, key) } : {}));
}

/** Makes a change that no field holds (adding, removing, switching); a refusal is said in the banner. */
export function change(to: Change): boolean {
  const made = make(to(useApp.getState().development.job));
  if (made.ok) settle(made.development, { message: null });
  else useApp.setState({ message: { kind: "refused", fault: made.fault } });
  return made.ok;
}

/** Puts another job on the board; the former one is set aside and can be brought back. */
export function replaceJob(job: Job): boolean {
  const before = useApp.getState().development.job;
  const made = make(job);
  if (made.ok) settle(made.development, { ...nothingInHand, message: { kind: "set-aside", job: before } });
  else useApp.setState({ message: { kind: "refused", fault: made.fault } });
  return made.ok;
}

function settle(development: Development, rest: Partial<AppState>): void {
  const kept = keepJob(development.job);
  const stations = development.pieces[0]?.stations.length ?? 0;
  const within = (station: number | null) => (station !== null && station < stations ? station : null);
  useApp.setState((state) => ({
    development,
    held: within(state.held),
    pointed: within(state.pointed),
    ...rest,
    ...(kept ? {} : { message: { kind: "no-storage" } as const }),
  }));
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
