import type { Vec2 } from "../../core/index";
import { joinBoxes, type Box } from "../../drawing/box";
import type { Size } from "../screen/useSize";

/** What part of the sheet the window shows: all of the window, or more when the drawing needs more for its lettering. */
export function viewOf(drawn: Box, width: number, height: number): Box {
  return joinBoxes(drawn, { left: 0, right: width, bottom: 0, top: height });
}

/** The point of the sheet under a pointer, for a view shown whole and centred in an element of this size. */
export function sheetPoint(view: Box, { width, height }: Size, event: { clientX: number; clientY: number; currentTarget: Element }): Vec2 {
  const corner = event.currentTarget.getBoundingClientRect();
  const mmPerPx = Math.max((view.right - view.left) / width, (view.top - view.bottom) / height);
  return {
    x: (view.left + view.right) / 2 + (event.clientX - corner.left - width / 2) * mmPerPx,
    y: (view.bottom + view.top) / 2 - (event.clientY - corner.top - height / 2) * mmPerPx,
  };
}
