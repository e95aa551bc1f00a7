import { create } from "zustand";
import type { Development, Job } from "../../core/index";
import type { Draft, Drafts, Fault } from "./attempt";
import { firstDevelopment } from "./firstDevelopment";
import { without } from "./without";

// What the screen is about: the last job that could be made, what is typed and not yet in it, and what is in hand.

export type Message =
  | { readonly kind: "unreadable-autosave" }
  | { readonly kind: "no-storage" }
  | { readonly kind: "open-elsewhere" }
  | { readonly kind: "not-fetched" }
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

export const nothingInHand = { drafts: {}, spelled: new Set<string>(), held: null, pointed: null, clause: null };

export const useApp = create<AppState>()(() => ({ development: firstDevelopment(), ...nothingInHand, message: null, undo: null, redo: null }));

/** Keeps text that cannot be read as a quantity, with the reason. */
export function keepDraft(key: string, draft: Draft): void {
  useApp.setState(({ drafts }) => ({ drafts: { ...drafts, [key]: draft } }));
}

/** Gives up what was typed into a field. */
export function dropDraft(key: string): void {
  useApp.setState(({ drafts }) => (key in drafts ? { drafts: without(drafts, key) } : {}));
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
