import { useDeferredValue, useSyncExternalStore } from "react";
import { useApp, type AppState } from "../store/store";
import { useInMotion } from "./inMotion";

/** Milliseconds between two looks while a hand drags. */
const pause = 150;

/** What is shown of the app while a hand drags; null at any other time, when it is what the app holds. */
let glimpse: AppState | null = null;
let timer: ReturnType<typeof setInterval> | undefined;
const watching = new Set<() => void>();

function look(): void {
  glimpse = useInMotion.getState().by === null ? null : useApp.getState();
  for (const tell of watching) tell();
}

useInMotion.subscribe(() => {
  clearInterval(timer);
  look();
  if (glimpse) timer = setInterval(look, pause);
});

function subscribe(tell: () => void): () => void {
  watching.add(tell);
  const end = useApp.subscribe(tell);
  return () => {
    watching.delete(tell);
    end();
  };
}

/**
 * What `select` finds in the app; while a hand drags a handle or a number, or only the one named in `of`, that of a moment ago:
 * for what is beside the drawing, so that the drawing itself keeps pace with the hand. `select` gives the same object while
 * nothing of it changes.
 */
export function useUnhurried<Value>(select: (state: AppState) => Value, of: "handle" | "number" | "either" = "either"): Value {
  const waits = useInMotion(({ by }) => by !== null && (of === "either" || by === of));
  const value = useSyncExternalStore(subscribe, () => select((waits ? glimpse : null) ?? useApp.getState()));
  // Drawn in the time that the frames of a drag leave.
  const late = useDeferredValue(value);
  return waits ? late : value;
}
