import { useEffect, useRef, useState, type PointerEvent } from "react";
import type { Vec2 } from "../../core/index";
import type { Handle } from "../../drawing/handles/handles";
import { useCamera } from "../board/camera";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { beginDrag, type Beside, type Drag } from "./drag";
import { useSnapping } from "./snapping";

/** A handle where it stands on the paper, CSS pixels from its top left. */
export interface Placed {
  readonly handle: Handle;
  readonly place: Vec2;
  readonly label: string;
}

/**
 * Drags of the handles, followed on the element that holds them. Where two are near each other the nearer one is taken;
 * `within` are those that can be. Gives the handle that is dragged and what is said beside it.
 */
export function useDragging(within: readonly Placed[]) {
  const [dragged, setDragged] = useState<{ readonly id: string; readonly beside: Beside } | null>(null);
  const dragging = useRef<{ readonly drag: Drag; readonly x: number; readonly y: number; readonly on: HTMLElement } | null>(null);
  const finish = (how: "end" | "abandon") => {
    dragging.current?.drag[how]();
    delete dragging.current?.on.dataset.held;
    dragging.current = null;
  };
  useEscape(() => {
    if (!dragging.current) return false;
    finish("abandon");
    return true;
  });
  const on = {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      const { shown } = useCamera.getState();
      const { left, top } = event.currentTarget.getBoundingClientRect();
      const taken = nearest(within, { x: event.clientX - left, y: event.clientY - top });
      if (event.button !== 0 || dragging.current || !shown || !taken) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const { handle, label } = taken;
      const say = (beside: Beside | null) => setDragged(beside && { id: handle.id, beside });
      dragging.current = { drag: beginDrag(handle, selectDevelopment(useApp.getState()), shown, label, say), x: event.clientX, y: event.clientY, on: event.currentTarget };
      event.currentTarget.dataset.held = "true";
    },
    onPointerMove({ clientX, clientY, altKey }: PointerEvent) {
      const now = dragging.current;
      now?.drag.move({ x: clientX - now.x, y: clientY - now.y }, useSnapping.getState().on !== altKey);
    },
    onPointerUp: () => finish("end"),
    onPointerCancel: () => finish("abandon"),
  };
  return { dragged, on };
}

function nearest(placed: readonly Placed[], { x, y }: Vec2): Placed | undefined {
  const off = ({ place }: Placed) => Math.hypot(place.x - x, place.y - y);
  return placed.reduce<Placed | undefined>((best, one) => (best && off(best) <= off(one) ? best : one), undefined);
}

/** Escape gives a drag up, wherever the focus is. `abandon` says whether there was one. */
function useEscape(abandon: () => boolean): void {
  const latest = useRef(abandon);
  useEffect(() => {
    latest.current = abandon;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "Escape" && latest.current()) event.stopPropagation();
    };
    window.addEventListener("keydown", onKey, { capture: true });
    return () => window.removeEventListener("keydown", onKey, { capture: true });
  }, []);
}
