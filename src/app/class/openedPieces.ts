import { create } from "zustand";
import { readJobText, writeJobText, type Job } from "../../core/index";

// The exercises that pieces were opened from by their codes, kept on this device: a piece on the board is known by its title, which holds
// its code, also after the page was loaded again and after readings were put into it.

interface Opened {
  /** Of the piece. */
  readonly title: string;
  readonly exercise: Job;
}

const place = "flatwright.opened";

/** Pieces remembered, the last opened first. */
const MOST = 8;

export const useOpened = create<{ readonly pieces: readonly Opened[] }>()(() => ({ pieces: kept() }));

/** The exercise of the piece on the board; null when that was not opened by its code. */
export function openedFrom({ title }: Job, { pieces } = useOpened.getState()): Job | null {
  return pieces.find((one) => one.title === title)?.exercise ?? null;
}

/** Remembers from which exercise a piece was opened. */
export function rememberOpened({ title }: Job, exercise: Job): void {
  const pieces = [{ title, exercise }, ...useOpened.getState().pieces.filter((one) => one.title !== title)].slice(0, MOST);
  useOpened.setState({ pieces });
  try {
    localStorage.setItem(place, JSON.stringify(pieces.map((one) => ({ title: one.title, exercise: writeJobText(one.exercise) }))));
  } catch {
    // Without storage they are known until the page is left.
  }
}

function kept(): Opened[] {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(place) ?? "[]");
    return Array.isArray(read) ? read.slice(0, MOST).flatMap(openedOf) : [];
  } catch {
    return [];
  }
}

function openedOf(data: unknown): Opened[] {
  if (typeof data !== "object" || data === null) return [];
  const { title, exercise } = data as Record<string, unknown>;
  if (typeof title !== "string" || typeof exercise !== "string") return [];
  const parsed = readJobText(exercise);
  return parsed.ok ? [{ title, exercise: parsed.job }] : [];
}
