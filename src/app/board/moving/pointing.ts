import { girthUnder } from "../../../drawing/station/girthUnder";
import { stationAt } from "../../../drawing/station/stationAt";
import { holdBetween, pointBetween, useBetween } from "../../store/between";
import { selectDevelopment } from "../../store/select";
import { useApp } from "../../store/store";
import { useCamera } from "../camera";
import { toggleKept } from "../projected";
import { mmPerPx, sheetPointAt } from "../view";

// Pointing at more than a station: at a place between stations, with Alt or when asked for; and keeping stations, with Shift.

/** Follows the pointer until the returned function is called. Listens after the hands, which stop what they use up. */
export function followPointing(paper: HTMLElement): () => void {
  const under = (event: MouseEvent) => {
    const { shown } = useCamera.getState();
    if (!shown || !(event.target instanceof Element && event.target.closest(".drawing"))) return null;
    const { left, top } = paper.getBoundingClientRect();
    return { shown, point: sheetPointAt(shown.view, shown.size, { x: event.clientX - left, y: event.clientY - top }) };
  };
  const girthOf = (event: MouseEvent): number | null => {
    const found = event.altKey || useBetween.getState().fine ? under(event) : null;
    const [piece] = useApp.getState().development.pieces;
    return found && piece ? girthUnder(found.shown.drawn, piece, found.point, mmPerPx(found.shown.view, found.shown.size)) : null;
  };

  const onMove = (event: PointerEvent) => {
    const girth = girthOf(event);
    pointBetween(girth);
    if (girth !== null) event.stopPropagation();
  };
  const onClick = (event: MouseEvent) => {
    const found = event.shiftKey ? under(event) : null;
    const station = found && stationAt(found.shown.drawn, selectDevelopment(useApp.getState()), found.point);
    const girth = girthOf(event);
    if (station !== null) toggleKept(station);
    else if (girth !== null) holdBetween(girth);
    else return;
    event.stopPropagation();
  };

  const ending = new AbortController();
  const early = { signal: ending.signal, capture: true };
  paper.addEventListener("pointermove", onMove, early);
  paper.addEventListener("click", onClick, early);
  paper.addEventListener("pointerleave", () => pointBetween(null), { signal: ending.signal });
  return () => ending.abort();
}
