import { create } from "zustand";
import { hold, point, useApp } from "./store";

// A place on the girth between stations, in hand instead of a station.

interface Between {
  /** Whether pointing means the place under the pointer and not the nearest station. */
  readonly fine: boolean;
  /** mm along the girth: the place merely pointed at, and the one kept. */
  readonly pointed: number | null;
  readonly held: number | null;
}

export const useBetween = create<Between>()(() => ({ fine: false, pointed: null, held: null }));

/** The place in hand, if one is: the one pointed at, else the one kept while no station is pointed at. */
export function girthInHand(): number | null {
  return inHand(useBetween.getState(), useApp.getState().pointed);
}

/** The same, followed. */
export function useGirthInHand(): number | null {
  const station = useApp((state) => state.pointed);
  return useBetween((between) => inHand(between, station));
}

function inHand({ pointed, held }: Between, station: number | null): number | null {
  return pointed ?? (station === null ? held : null);
}

/** Takes a place in hand, or puts it down; a station in hand gives way to it. */
export function holdBetween(girth: number | null): void {
  hold(null);
  useBetween.setState({ held: girth, pointed: null });
}

/** Takes a station in hand; null puts down what is, a place between stations too. */
export function take(station: number | null): void {
  if (station === null) holdBetween(null);
  else hold(station);
}

export function pointBetween(girth: number | null): void {
  if (girth !== null) point(null);
  if (useBetween.getState().pointed !== girth) useBetween.setState({ pointed: girth });
}

export function setFine(fine: boolean): void {
  useBetween.setState({ fine });
}

// A station taken in hand, or another job, puts the place down.
useApp.subscribe((now, before) => {
  if ((now.held !== before.held && now.held !== null) || now.development !== before.development) useBetween.setState({ pointed: null, held: null });
});
