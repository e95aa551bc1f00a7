import type { Vec2 } from "../../core/index";
import { joinBoxes, type Box } from "../../drawing/box";
import type { Size } from "../screen/useSize";

/** What part of the sheet the window shows: all of the window, or more when the drawing needs more for its lettering. */
export function viewOf(drawn: Box, width: number, height: number): Box {
  return joinBoxes(drawn, { left: 0, right: width, bottom: 0, top: height });
}

/** Sheet mm a CSS pixel, for a view shown whole and centred in an element of this size. */
export function mmPerPx(view: Box, { width, height }: Size): number {
  return Math.max((view.right - view.left) / width, (view.top - view.bottom) / height);
}

/** The part of the sheet that an element shows when it takes another size and every point keeps its place from the top left. */
export function viewKept(view: Box, before: Size, now: Size): Box {
  const mm = mmPerPx(view, before);
  const { x: left, y: top } = sheetPointAt(view, before, { x: 0, y: 0 });
  return { left, top, right: left + mm * now.width, bottom: top - mm * now.height };
}

/** The point of the sheet at a place of the element, in CSS pixels from its top left. */
export function sheetPointAt(view: Box, size: Size, place: Vec2): Vec2 {
  const mm = mmPerPx(view, size);
  return {
    x: (view.left + view.right) / 2 + (place.x - size.width / 2) * mm,
    y: (view.bottom + view.top) / 2 - (place.y - size.height / 2) * mm,
  };
}

/** The place of the element, in CSS pixels from its top left, at which a point of the sheet is shown. */
export function windowPoint(view: Box, { width, height }: Size, { x, y }: Vec2): Vec2 {
  const mm = mmPerPx(view, { width, height });
  return { x: width / 2 + (x - (view.left + view.right) / 2) / mm, y: height / 2 - (y - (view.bottom + view.top) / 2) / mm };
}

/** The point of the sheet under a pointer over the element. */
export function sheetPoint(view: Box, size: Size, event: { clientX: number; clientY: number; currentTarget: Element }): Vec2 {
  const corner = event.currentTarget.getBoundingClientRect();
  return sheetPointAt(view, size, { x: event.clientX - corner.left, y: event.clientY - corner.top });
}
