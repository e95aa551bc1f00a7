import type { Vec2 } from "../../../core/index";
import { useCamera } from "../camera";
import { zoomNow } from "./moves";
import { movingPicture } from "./picture";

// Hands on the paper. A drag moves it; the wheel goes closer with Ctrl or the command key, and without them only while the board
// has the focus, so that a page scrolled over the board scrolls on. On a touch screen two fingers move and scale; one finger scrolls
// the page while the board stands whole, and moves the paper when it is looked at closely.

/** CSS pixels a press may stray and still be a click. */
const slack = 4;

/** How fast the wheel goes closer, a CSS pixel of its turn, and the most it does at once. */
const rate = 0.01;
const mostTurn = 25;

/** Follows the hands until the returned function is called. */
export function followHands(board: HTMLElement, paper: HTMLElement): () => void {
  const picture = movingPicture(paper);
  const down = new Map<number, Vec2>();
  let dragging = false;
  const placeOf = ({ clientX, clientY }: { clientX: number; clientY: number }): Vec2 => {
    const { left, top } = paper.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  };
  const begin = (event: PointerEvent) => {
    dragging = true;
    paper.dataset.dragging = "true";
    for (const id of [...down.keys()]) paper.setPointerCapture(id);
    event.stopPropagation();
  };

  const onWheel = (event: WheelEvent) => {
    const asked = event.ctrlKey || event.metaKey || board.contains(document.activeElement);
    const turn = Math.max(-mostTurn, Math.min(mostTurn, event.deltaY));
    if (!asked || isInCorner(event) || (turn > 0 && zoomNow() === 1 && !event.ctrlKey)) return;
    event.preventDefault();
    picture.scale(placeOf(event), Math.exp(-turn * rate));
    picture.settleSoon();
  };

  const onDown = (event: PointerEvent) => {
    if (!isOnDrawing(event) || (event.pointerType === "mouse" && event.button !== 0)) return;
    if (down.size === 0) dragging = false;
    down.set(event.pointerId, placeOf(event));
    if (down.size === 2) begin(event);
  };

  const onMove = (event: PointerEvent) => {
    const last = down.get(event.pointerId);
    if (!last) return;
    const now = placeOf(event);
    if (!dragging) {
      const oneFinger = event.pointerType === "touch" && useCamera.getState().camera === null;
      if (oneFinger || Math.hypot(now.x - last.x, now.y - last.y) <= slack) return;
      begin(event);
    }
    event.stopPropagation();
    const [other] = [...down].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
    down.set(event.pointerId, now);
    if (!other) picture.move(now.x - last.x, now.y - last.y);
    else {
      // Each finger carries its half of the way between them.
      picture.move((now.x - last.x) / 2, (now.y - last.y) / 2);
      const apart = (place: Vec2) => Math.max(1, Math.hypot(place.x - other.x, place.y - other.y));
      picture.scale({ x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 }, apart(now) / apart(last));
    }
  };

  const onUp = (event: PointerEvent) => {
    if (!down.delete(event.pointerId) || down.size > 0) return;
    delete paper.dataset.dragging;
    if (dragging) picture.settle();
  };

  // The click that ends a drag takes nothing in hand.
  const onClick = (event: MouseEvent) => {
    if (dragging) event.stopPropagation();
    dragging = false;
  };

  // Two fingers are for the paper, whatever the page would make of them.
  const onTouchMove = (event: TouchEvent) => {
    if (event.touches.length > 1 && event.cancelable) event.preventDefault();
  };

  const ending = new AbortController();
  const { signal } = ending;
  const early = { signal, capture: true };
  paper.addEventListener("wheel", onWheel, { signal, passive: false });
  paper.addEventListener("touchmove", onTouchMove, { signal, passive: false });
  paper.addEventListener("pointerdown", onDown, early);
  paper.addEventListener("pointermove", onMove, early);
  paper.addEventListener("pointerup", onUp, early);
  paper.addEventListener("pointercancel", onUp, early);
  paper.addEventListener("click", onClick, early);
  return () => ending.abort();
}

function isOnDrawing({ target }: Event): boolean {
  return target instanceof Element && !target.matches("[data-traced]") && (target.closest(".drawing") !== null || target.matches(".board-paper"));
}

function isInCorner({ target }: Event): boolean {
  return target instanceof Element && target.closest(".board-corner") !== null;
}
