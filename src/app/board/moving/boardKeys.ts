import { selectStation } from "../../store/select";
import { useApp } from "../../store/store";
import { toggleKept } from "../projected";
import { closer, fit, further, stepOver } from "./moves";

const keys: Readonly<Record<string, () => void>> = { "+": closer, "=": closer, "-": further, "−": further, "0": fit, k: keep, K: keep };

const arrows: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** Keys on the board: + and − closer and further, 0 whole, Shift with the arrows over the paper, k keeps the station in hand. */
export function followKeys(board: HTMLElement): () => void {
  const onKey = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || isElsewhere(event.target)) return;
    const arrow = event.shiftKey ? arrows[event.key] : undefined;
    const act = keys[event.key];
    if (arrow) stepOver(...arrow);
    else if (act) act();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  board.addEventListener("keydown", onKey, { capture: true });
  return () => board.removeEventListener("keydown", onKey, { capture: true });
}

function keep(): void {
  const station = selectStation(useApp.getState());
  if (station !== null) toggleKept(station);
}

/** Fields and the roll-up keep their own keys. */
function isElsewhere(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest("input, select, .board-corner, .handles") !== null;
}
