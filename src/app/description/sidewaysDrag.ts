import { useInMotion } from "../board/inMotion";
import type { Gesture } from "../store/history";

/** Pixels before a press becomes a drag, and pixels a step after that. */
const threshold = 6;
const pixelsPerStep = 5;

interface Steps {
  /** Gives the value to count from. */
  readonly begin: () => number;
  /** Takes the steps from there; the gesture is the same for the whole drag. */
  readonly move: (from: number, steps: number, gesture: Gesture) => void;
  /** The pointer is up. */
  readonly done: () => void;
  /** As if the drag had never been: at Escape, wherever the focus is, and when the device breaks it off. */
  readonly giveUp: (gesture: Gesture) => void;
}

/** Steps a field while it is dragged sideways, from the press on until the pointer is up. */
export function followSideways(press: PointerEvent, field: HTMLInputElement, { begin, move, done, giveUp }: Steps): void {
  const gesture = {};
  const ending = new AbortController();
  let from: number | null = null;
  const finish = (how: (gesture: Gesture) => void) => {
    ending.abort();
    useInMotion.setState({ by: null });
    if (from !== null) how(gesture);
  };
  const onMove = ({ clientX, buttons, pointerId }: PointerEvent) => {
    if (pointerId !== press.pointerId) return;
    if ((buttons & 1) === 0) return finish(done);
    const way = clientX - press.clientX;
    if (from === null) {
      if (Math.abs(way) < threshold) return;
      from = begin();
      useInMotion.setState({ by: "number" });
      field.blur();
      field.setPointerCapture(pointerId);
    }
    move(from, Math.trunc(way / pixelsPerStep), gesture);
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || from === null) return;
    event.stopPropagation();
    finish(giveUp);
  };

  const { signal } = ending;
  // On the window: by the time this has been fetched the pointer may have left the field.
  window.addEventListener("pointermove", onMove, { signal });
  window.addEventListener("pointerup", ({ pointerId }) => pointerId === press.pointerId && finish(done), { signal });
  window.addEventListener("pointercancel", ({ pointerId }) => pointerId === press.pointerId && finish(giveUp), { signal });
  window.addEventListener("keydown", onKey, { signal, capture: true });
}
