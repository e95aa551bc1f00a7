import { useRef, type DragEvent, type PointerEvent } from "react";
import type { Gesture } from "../store/history";

/** Pixels before a press becomes a drag, and pixels a step after that. */
const threshold = 6;
const pixelsPerStep = 5;

/**
 * Steps a field while it is dragged sideways. Only a field not being typed in can be dragged, so that dragging
 * over typed text still selects it. `begin` gives the value to count from, `move` takes the steps from there; the
 * gesture it is given is the same for the whole drag. Escape gives the drag up, wherever the focus is.
 */
export function useSidewaysDrag(begin: () => number, move: (from: number, steps: number, gesture: Gesture) => void, giveUp: (gesture: Gesture) => void) {
  const drag = useRef<{ x: number; from: number | null } | null>(null);
  const keys = useRef<AbortController>(null);
  const end = () => {
    drag.current = null;
    keys.current?.abort();
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !drag.current) return;
    event.stopPropagation();
    giveUp(drag.current);
    end();
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
    onPointerUp: end,
    onPointerCancel: end,
  };
}
