import { useState, useSyncExternalStore } from "react";
import { useApp, type AppState } from "../store/store";
import { useInMotion } from "./inMotion";
import { inTurn } from "./inTurn";

export type Select<Value> = (state: AppState) => Value;
type By = "handle" | "number";

/**
 * What `select` finds in the app; while a hand drags a handle or a number, or only the one named in `of`, that of a moment ago:
 * for what is beside the drawing, so that the drawing itself keeps pace with the hand. `select` gives the same object while
 * nothing of it changes.
 */
export function useUnhurried<Value>(select: Select<Value>, of?: By): Value {
  return useGlimpse(select, of, inTurn);
}

/** The same with another way of looking again while a hand drags. */
export function useGlimpse<Value>(select: Select<Value>, of: By | undefined, again: typeof inTurn): Value {
  const [glimpse] = useState(() => createGlimpse(of, again));
  return useSyncExternalStore(glimpse.subscribe, () => select(glimpse.state()));
}

/** The app as it is, and while a hand drags as it was when last looked at: when the drag began and whenever `again` says. */
function createGlimpse(of: By | undefined, again: typeof inTurn) {
  let seen: AppState | null = null;
  const subscribe = (tell: () => void) => {
    let leave = () => {};
    const follow = ({ by }: { readonly by: By | null }) => {
      const waits = by !== null && (of === undefined || by === of);
      if (waits === (seen !== null)) return;
      leave();
      seen = waits ? useApp.getState() : null;
      leave = waits ? again(() => ((seen = useApp.getState()), tell())) : () => {};
      if (!waits) tell();
    };
    follow(useInMotion.getState());
    const endings = [useInMotion.subscribe(follow), useApp.subscribe(() => seen ?? tell())];
    return () => {
      [leave, ...endings].forEach((end) => end());
      seen = null;
    };
  };
  return { subscribe, state: () => seen ?? useApp.getState() };
}
