import type { Vec2 } from "../../core/index";
import type { Size } from "../screen/useSize";

// What of the picture is seen in the panel, and where.

/** The pixel of the picture in the middle of the window, and how many CSS pixels one is. */
export interface PictureView {
  readonly middle: Vec2;
  readonly scale: number;
}

/** CSS pixels a pixel at most. */
const closest = 12;

/** The whole picture in a window. */
export function wholeView(picture: Size, window: Size): PictureView {
  return { middle: { x: picture.width / 2, y: picture.height / 2 }, scale: Math.min(window.width / picture.width, window.height / picture.height) };
}

/** The pixel place under a place of the window (CSS pixels from its upper left). */
export function pictureAt({ middle, scale }: PictureView, window: Size, place: Vec2): Vec2 {
  return { x: middle.x + (place.x - window.width / 2) / scale, y: middle.y + (place.y - window.height / 2) / scale };
}

/** Closer or further by a factor, with the place of the window kept over the same pixel; never further than whole. */
export function scaled(view: PictureView, picture: Size, window: Size, about: Vec2, factor: number): PictureView {
  const whole = wholeView(picture, window);
  const scale = Math.min(Math.max(closest, whole.scale), view.scale * factor);
  if (scale <= whole.scale) return whole;
  const held = pictureAt(view, window, about);
  return kept({ scale, middle: { x: held.x - (about.x - window.width / 2) / scale, y: held.y - (about.y - window.height / 2) / scale } }, picture);
}

/** Moved with the hand by CSS pixels; the middle of the window stays over the picture. */
export function moved({ middle, scale }: PictureView, picture: Size, right: number, down: number): PictureView {
  return kept({ scale, middle: { x: middle.x - right / scale, y: middle.y - down / scale } }, picture);
}

/** The viewBox of an SVG of the size of the window. */
export function viewBoxOf({ middle, scale }: PictureView, { width, height }: Size): string {
  return `${middle.x - width / scale / 2} ${middle.y - height / scale / 2} ${width / scale} ${height / scale}`;
}

function kept({ middle, scale }: PictureView, { width, height }: Size): PictureView {
  return { scale, middle: { x: Math.min(width, Math.max(0, middle.x)), y: Math.min(height, Math.max(0, middle.y)) } };
}
