import type { Job } from "../../core/index";
import { redrawn } from "../../drawing/board/board";
import type { Shown } from "../board/camera";
import { useInMotion } from "../board/inMotion";
import { make } from "../store/attempt";

/** How often a kind of job is rehearsed. */
const times = 40;

/** How often each kind still is. */
const left = new Map<string, number>();

/**
 * Goes through what a drag asks for at each move, unseen, while nobody waits: browsers make fast code of what has run a few times,
 * and so the first drag does not begin with a jerk. Once for each kind of job; returns how to leave off.
 */
export function rehearse({ development: { job }, options, drawn }: Shown): () => void {
  const kind = kindOf(job);
  let request = 0;
  const next = () => {
    if ((left.get(kind) ?? times) > 0 && useInMotion.getState().by === null) request = whenIdle(once);
  };
  const once = () => {
    left.set(kind, (left.get(kind) ?? times) - 1);
    const made = make(job);
    if (made.ok) redrawn(drawn, made.development, options);
    next();
  };
  next();
  return () => (knowsIdle ? cancelIdleCallback(request) : clearTimeout(request));
}

/** Not every browser says when it is idle. */
const knowsIdle = typeof requestIdleCallback === "function";

function whenIdle(run: () => void): number {
  return knowsIdle ? requestIdleCallback(run) : window.setTimeout(run, 50);
}

/** Jobs of a kind are developed and drawn by the same code. */
function kindOf({ part: { attitude, cuts } }: Job): string {
  return [attitude, ...new Set(cuts.map((cut) => (cut.kind === "shaped" ? cut.profile.shape : cut.kind)))].sort().join();
}
