import { useRef, type DragEvent, type PointerEvent } from "react";
import type { Gesture } from "../store/history";

/** Pixels before a press becomes a drag, and pixels a step after that. */
const threshold = 6;
const pixelsPerStep = 5;

interface Drag {
  readonly x: number;
  /** The value counted from; null while the press is no drag yet. */
  from: number | null;
}

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

/** Steps a field while it is dragged sideways. Only a field not being typed in can be dragged, so that dragging over typed text still selects it. */
export function useSidewaysDrag({ begin, move, done, giveUp }: Steps) {
  const drag = useRef<Drag | null>(null);
  const keys = useRef<AbortController>(null);
  const finish = (how: (gesture: Gesture) => void) => {
    if (drag.current && drag.current.from !== null) how(drag.current);
    drag.current = null;
    keys.current?.abort();
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    finish(giveUp);
  };
  return {
    onPointerDown(event: PointerEvent<HTMLInputElement>) {
      if (event.button === 0 && document.activeElement !== event.currentTarget) drag.current = { x: event.clientX, from: null };
    },
    onPointerMove(event: PointerEvent<HTMLInputElement>) {
      const now = drag.current;
      if (!now || (event.buttons & 1) === 0) return;
      const way = event.clientX - now.x;
      if (now.from === null) {
        if (Math.abs(way) < threshold) return;
        now.from = begin();
        event.currentTarget.blur();
        event.currentTarget.setPointerCapture(event.pointerId);
        keys.current = new AbortController();
        window.addEventListener("keydown", onKey, { capture: true, signal: keys.current.signal });
      }
      move(now.from, Math.trunc(way / pixelsPerStep), now);
    },
    // The browser's own dragging of selected text would end ours.
    onDragStart(event: DragEvent<HTMLInputElement>) {
      event.preventDefault();
    },
    onPointerUp: () => finish(done),
    onPointerCancel: () => finish(giveUp),
  };
}
