import { readJobText, writeJobText, type Development, type Job } from "../../core/index";
import { make } from "./attempt";

// The job is kept in the browser after every change. What cannot be read is put aside, never thrown away.

const place = "flatwright.job";
const asidePlace = "flatwright.job.unreadable";

export type Kept = { readonly kind: "none" } | { readonly kind: "job"; readonly development: Development } | { readonly kind: "unreadable" } | { readonly kind: "no-storage" };

/** The job kept in this browser; one that cannot be read is moved aside and said. */
export function keptJob(): Kept {
  try {
    const text = localStorage.getItem(place);
    if (text === null) return { kind: "none" };
    const read = readJobText(text);
    const made = read.ok ? make(read.job) : null;
    if (made?.ok) return { kind: "job", development: made.development };
    localStorage.setItem(asidePlace, text);
    return { kind: "unreadable" };
  } catch {
    return { kind: "no-storage" };
  }
}

/** Keeps the job; false when the browser has no room or gives none. */
export function keepJob(job: Job): boolean {
  try {
    localStorage.setItem(place, writeJobText(job));
    return true;
  } catch {
    return false;
  }
}

/** Puts the kept job aside, so that the page begins anew when it is loaded again. */
export function forgetJob(): void {
  try {
    const text = localStorage.getItem(place);
    if (text !== null) localStorage.setItem(asidePlace, text);
    localStorage.removeItem(place);
  } catch {
    // Without storage there is nothing to forget.
  }
}
