import type { KeyboardEvent } from "react";
import { girthInHand, holdBetween, useBetween } from "../store/between";
import { selectPiece, selectStation } from "../store/select";
import { useApp } from "../store/store";
import { stepOf } from "../quantity/format";

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: -10, PageDown: 10 };

/** With Alt, or while pointing goes between stations, the keys that step along the stations step along the girth. True when it was such a key. */
export function betweenKey(event: KeyboardEvent): boolean {
  const step = steps[event.key];
  const { fine } = useBetween.getState();
  if (event.key === "Escape" && girthInHand() !== null) holdBetween(null);
  else if (step !== undefined && (event.altKey || fine)) stepBetween(step);
  else return false;
  event.preventDefault();
  return true;
}

/** Goes on from the place or station in hand by so many millimetres or sixteenths of an inch, no farther than the ends of the girth. */
function stepBetween(steps: number): void {
  const state = useApp.getState();
  const piece = selectPiece(state);
  if (!piece) return;
  const from = girthInHand() ?? piece.stations[selectStation(state) ?? 0]?.girth ?? 0;
  const step = stepOf("length", state.development.job.units);
  // From a place off the steps to the next one on them.
  const next = steps > 0 ? Math.floor(from / step + 1e-9) + steps : Math.ceil(from / step - 1e-9) + steps;
  holdBetween(Math.min(piece.pattern.girth, Math.max(0, next * step)));
}
