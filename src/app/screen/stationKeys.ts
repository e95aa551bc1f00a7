import type { KeyboardEvent } from "react";
import { hold, useApp } from "../store/store";
import { selectStation } from "../store/select";
import { betweenKey } from "./betweenKeys";

/** Arrow keys, Page Up and Down, Home, End and Escape move the station in hand among `count` stations. */
export function stationKeys(count: number) {
  return (event: KeyboardEvent) => {
    if (betweenKey(event)) return;
    const next = stationAfter(event.key, selectStation(useApp.getState()), count);
    if (next === undefined) return;
    event.preventDefault();
    hold(next);
  };
}

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: -5, PageDown: 5 };

/** The station a key leads to; null puts it down, undefined is no key of ours. */
export function stationAfter(key: string, station: number | null, count: number): number | null | undefined {
  if (key === "Home") return 0;
  if (key === "End") return count - 1;
  if (key === "Escape") return null;
  const step = steps[key];
  if (step === undefined) return undefined;
  if (station === null) return step > 0 ? 0 : count - 1;
  return Math.min(count - 1, Math.max(0, station + step));
}
