import type { Job } from "../../core/index";
import type { Shown } from "../board/camera";
import { useInMotion } from "../board/inMotion";
import { unseenBoard, type UnseenBoard } from "./unseenBoard";

/** How often a kind of job is rehearsed. */
const times = 40;

/** Milliseconds of rest there must be for another one. */
const spare = 15;

/** How often each kind still is. */
const left = new Map<string, number>();

/**
 * Drags the handles of the board a little where nobody sees it, while nobody waits: browsers make fast code of what has run a few times,
 * and so the first drag does not begin with a jerk. Once for each kind of job, and no more once it has been dragged by hand; returns how to
 * leave off.
 */
export function rehearse(shown: Shown): () => void {
  const kind = kindOf(shown.development.job);
  const turns = () => left.get(kind) ?? times;
  let request = 0;
  let unseen: UnseenBoard | null = null;
  const next = () => {
    if (useInMotion.getState().by !== null) left.set(kind, 0);
    if (turns() > 0) request = whenIdle(some);
    else unseen?.clear();
  };
  const some = (rest?: IdleDeadline) => {
    unseen ??= unseenBoard(shown);
    do {
      left.set(kind, turns() - 1);
      unseen.drag(turns());
    } while (turns() > 0 && rest && rest.timeRemaining() > spare);
    next();
  };
  next();
  return () => {
    if (knowsIdle) cancelIdleCallback(request);
    else clearTimeout(request);
    unseen?.clear();
  };
}

/** Not every browser says when it is idle. */
const knowsIdle = typeof requestIdleCallback === "function";

function whenIdle(run: (rest?: IdleDeadline) => void): number {
  return knowsIdle ? requestIdleCallback(run) : window.setTimeout(run, 50);
}

/** Jobs of a kind are developed and drawn by the same code. */
function kindOf({ part: { attitude, cuts } }: Job): string {
  return [attitude, ...new Set(cuts.map((cut) => (cut.kind === "shaped" ? cut.profile.shape : cut.kind)))].sort().join();
}
