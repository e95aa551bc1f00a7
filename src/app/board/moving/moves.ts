import type { Vec2 } from "../../../core/index";
import { anchorAt, middleOf } from "../../../drawing/board/anchor";
import type { BlockName } from "../../../drawing/board/arrange";
import { blockAtFull } from "../../../drawing/board/blockAtFull";
import { selectDevelopment } from "../../store/select";
import { useApp } from "../../store/store";
import { look, useCamera } from "../camera";
import { sheetPointAt } from "../view";

/** How many times larger than whole the board is drawn at most. */
export const mostZoom = 40;

/** How much closer a key or button goes. */
const step = 1.5;

/** Part of the window a key moves the paper. */
const stride = 1 / 8;

const middle: Vec2 = { x: 0.5, y: 0.5 };

export const fit = () => look(null);
export const closer = () => lookCloser(step);
export const further = () => lookCloser(1 / step);

/** How many times larger than whole the board is drawn. */
export function zoomNow(): number {
  return useCamera.getState().camera?.zoom ?? 1;
}

/** Goes to this zoom, so that what is at one place of the window (CSS pixels) comes to stand at another. */
export function lookSo(zoom: number, from: Vec2, to: Vec2): void {
  const { shown } = useCamera.getState();
  if (!shown) return;
  const { drawn, view, size } = shown;
  const within = Math.min(mostZoom, Math.max(1, zoom));
  look({ zoom: within, anchor: anchorAt(drawn, sheetPointAt(view, size, from)), at: { x: to.x / size.width, y: to.y / size.height } });
}

/** Closer about the middle of the window; as far out as it goes, the board stands whole. */
function lookCloser(factor: number): void {
  const { shown } = useCamera.getState();
  const zoom = zoomNow() * factor;
  if (!shown) return;
  const at = { x: middle.x * shown.size.width, y: middle.y * shown.size.height };
  if (zoom < 1.001) fit();
  else lookSo(zoom, at, at);
}

/** Moves the window over the paper by strides to the right and down. */
export function stepOver(right: number, down: number): void {
  const { shown } = useCamera.getState();
  if (!shown) return;
  const { width, height } = shown.size;
  const at = { x: middle.x * width, y: middle.y * height };
  lookSo(zoomNow(), at, { x: at.x - right * stride * width, y: at.y - down * stride * height });
}

/** One view, or the pattern, as large as the window takes it. */
export function lookAt(block: BlockName): void {
  const { shown } = useCamera.getState();
  if (!shown) return;
  const drawn = blockAtFull(selectDevelopment(useApp.getState()), shown.options, block, shown.fit);
  look({ zoom: Math.min(mostZoom, drawn.scale / shown.fit.scale), anchor: middleOf(drawn, block), at: middle });
}
