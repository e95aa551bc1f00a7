// How much of the sheet do items take?

import { type Segment, arcSweep, segmentPoint } from "../core/index";
import { type Box, EMPTY_BOX, boxOfPoints } from "./box";
import type { Item } from "./display";
import { textBox } from "./lettering";

/** The box around items, line widths left out; a cubic counts with its control points. `EMPTY_BOX` for none. */
export function boundsOf(items: readonly Item[]): Box {
  return boxAround(items, boundsOfItem);
}

/** The box around one item. */
export function boundsOfItem(item: Item): Box {
  switch (item.kind) {
    case "path":
      return boxAround(item.segments, boundsOfSegment);
    case "circle": {
      const { centre: { x, y }, radius } = item;
      return { left: x - radius, right: x + radius, bottom: y - radius, top: y + radius };
    }
    case "text":
      return textBox(item);
    case "arrowhead": {
      const { tip, direction, length } = item;
      return boxOfPoints([tip, { x: tip.x - length * Math.cos(direction), y: tip.y - length * Math.sin(direction) }]);
    }
    case "surface":
      return boxOfPoints(item.loops.flat());
    case "group":
      return item.clip;
  }
}

/** One box after the other, without a box for every step: this is asked of every item at every scale that is tried. */
function boxAround<Thing>(things: readonly Thing[], boxOf: (thing: Thing) => Box): Box {
  let { left, right, bottom, top } = EMPTY_BOX;
  for (const thing of things) {
    const box = boxOf(thing);
    if (box.left < left) left = box.left;
    if (box.right > right) right = box.right;
    if (box.bottom < bottom) bottom = box.bottom;
    if (box.top > top) top = box.top;
  }
  return { left, right, bottom, top };
}

function boundsOfSegment(segment: Segment): Box {
  if (segment.kind === "cubic") return boxOfPoints([segment.from, segment.c1, segment.c2, segment.to]);
  if (segment.kind === "line") {
    const { from, to } = segment;
    return { left: Math.min(from.x, to.x), right: Math.max(from.x, to.x), bottom: Math.min(from.y, to.y), top: Math.max(from.y, to.y) };
  }
  const { start, sweep } = arcSweep(segment);
  const points = [segment.from, segment.to];
  for (let quarter = -8; quarter <= 8; quarter++) {
    const part = ((quarter * Math.PI) / 2 - start) / sweep;
    if (part > 0 && part < 1) points.push(segmentPoint(segment, part));
  }
  return boxOfPoints(points);
}
