import { readJobText, writeJobText, type Development, type Job } from "../../core/index";
import { make } from "./attempt";
import { createPageSlot } from "./pageSlot";
import { putAside } from "./slots";

// The job is kept in the browser after every change. What cannot be read is put aside, never thrown away.

/** Milliseconds between two savings while changes follow one another. */
const pause = 300;

export type Kept = { readonly kind: "none" } | { readonly kind: "job"; readonly development: Development } | { readonly kind: "unreadable" } | { readonly kind: "no-storage" };

interface Listener {
  /** Told after each saving whether the browser took it. */
  kept(whether: boolean): void;
  /** Told when a work stays behind in its slot, because another job was put in its place. */
  left(): void;
}

/** Keeps the job of one page. */
export function createAutosave(listener: Listener) {
  const slot = createPageSlot();
  let waiting: Job | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  /** Keeps what still waits for its turn. */
  const flush = () => {
    if (waiting === null) return;
    const text = writeJobText(waiting);
    waiting = null;
    listener.kept(succeeds(() => slot.write(text)));
  };
  const tick = () => {
    timer = waiting === null ? undefined : setTimeout(tick, pause);
    flush();
  };

  /** Keeps a changed job: at once, and at most every 0.3 s while changes follow one another. */
  const keep = (job: Job) => {
    waiting = job;
    if (timer === undefined) tick();
  };
  /** Keeps a job put in the place of another, which stays kept when it has been worked on. */
  const keepInstead = (job: Job) => {
    flush();
    let stays = false;
    succeeds(() => (stays = slot.beginAnother()));
    waiting = job;
    flush();
    if (stays) listener.left();
  };
  /** The job to begin with; one that cannot be read is moved aside and said. */
  const first = (): Kept => {
    try {
      const found = slot.first();
      if (!found) return { kind: "none" };
      const read = readJobText(found.text);
      const made = read.ok ? make(read.job) : null;
      if (made?.ok) return { kind: "job", development: made.development };
      putAside(found.key);
      return { kind: "unreadable" };
    } catch {
      return { kind: "no-storage" };
    }
  };
  /** Puts what is kept aside, so that the page begins anew when it is loaded again. */
  const forget = () => succeeds(slot.forget);

  return { slot, first, keep, keepInstead, flush, forget };
}

function succeeds(act: () => void): boolean {
  try {
    act();
    return true;
  } catch {
    return false;
  }
}
