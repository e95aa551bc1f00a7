import { useSyncExternalStore } from "react";
import { useApp, type AppState } from "../store/store";
import { useHeldShown } from "./heldShown";

/** Milliseconds between two looks while a handle is dragged. */
const pause = 150;

/** What is shown of the app while a handle is dragged; null at any other time, when it is what the app holds. */
let glimpse: AppState | null = null;
let timer: ReturnType<typeof setInterval> | undefined;
const watching = new Set<() => void>();

function look(): void {
  glimpse = useHeldShown.getState().held ? useApp.getState() : null;
  for (const tell of watching) tell();
}

useHeldShown.subscribe(() => {
  clearInterval(timer);
  look();
  if (glimpse) timer = setInterval(look, pause);
});

function subscribe(tell: () => void): () => void {
  watching.add(tell);
  const end = useApp.subscribe(() => glimpse ?? tell());
  return () => {
    watching.delete(tell);
    end();
  };
}

/**
 * What `select` finds in the app; while a handle is dragged, that of a moment ago: for what is beside the drawing, so that the
 * drawing itself keeps pace with the hand. `select` gives the same object while nothing of it changes.
 */
export function useUnhurried<Value>(select: (state: AppState) => Value): Value {
  return useSyncExternalStore(subscribe, () => select(glimpse ?? useApp.getState()));
}
