import type { Vec2 } from "../../../core/index";
import { useCamera } from "../camera";
import { fit, lookSo, mostZoom, zoomNow } from "./moves";

// The drawing while it is being moved: one transform of the picture as it stands, so that nothing is drawn anew at every
// frame. When the hand rests it is drawn at its new scale, with lettering and widths as they should be.

/** Milliseconds without a turn of the wheel after which it rests. */
const rest = 160;

export interface Picture {
  /** Moves by CSS pixels. */
  move(right: number, down: number): void;
  /** Scales about a place of the window, in CSS pixels. */
  scale(about: Vec2, factor: number): void;
  /** Draws anew what has been moved; soon, or at once. */
  settleSoon(): void;
  settle(): void;
}

/** The picture in an element that holds the drawing. */
export function movingPicture(paper: HTMLElement): Picture {
  let [k, x, y] = [1, 0, 0];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const moved = () => k !== 1 || x !== 0 || y !== 0;
  const show = () => {
    const drawing = paper.querySelector<SVGElement>(".drawing");
    if (drawing) drawing.style.transform = moved() ? `translate(${x}px, ${y}px) scale(${k})` : "";
  };

  const settle = () => {
    clearTimeout(timer);
    const { shown } = useCamera.getState();
    if (!moved() || !shown) return;
    const to = { x: shown.size.width / 2, y: shown.size.height / 2 };
    const from = { x: (to.x - x) / k, y: (to.y - y) / k };
    const zoom = zoomNow() * k;
    [k, x, y] = [1, 0, 0];
    if (zoom < 1.001 && zoomNow() > 1) fit();
    else lookSo(zoom, from, to);
    show();
  };

  return {
    move: (right, down) => {
      x += right;
      y += down;
      show();
    },
    scale: (about, wanted) => {
      const zoom = zoomNow();
      const factor = Math.min(mostZoom / (zoom * k), Math.max(1 / (zoom * k), wanted));
      k *= factor;
      x = about.x - factor * (about.x - x);
      y = about.y - factor * (about.y - y);
      show();
    },
    settleSoon: () => {
      clearTimeout(timer);
      timer = setTimeout(settle, rest);
    },
    settle,
  };
}
