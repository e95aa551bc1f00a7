// How much of the sheet do items take?

import { type Segment, arcSweep, segmentPoint } from "../core/index";
import { type Box, EMPTY_BOX, boxOfPoints, joinBoxes } from "./box";
import type { Item } from "./display";
import { textBox } from "./lettering";

/** The box around items, line widths left out; a cubic counts with its control points. `EMPTY_BOX` for none. */
export function boundsOf(items: readonly Item[]): Box {
  return items.reduce((box, item) => joinBoxes(box, boundsOfItem(item)), EMPTY_BOX);
}

/** The box around one item. */
export function boundsOfItem(item: Item): Box {
  switch (item.kind) {
    case "path":
      return item.segments.reduce((box, segment) => joinBoxes(box, boundsOfSegment(segment)), EMPTY_BOX);
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

function boundsOfSegment(segment: Segment): Box {
  if (segment.kind === "cubic") return boxOfPoints([segment.from, segment.c1, segment.c2, segment.to]);
  if (segment.kind === "line") return boxOfPoints([segment.from, segment.to]);
  const { start, sweep } = arcSweep(segment);
  const points = [segment.from, segment.to];
  for (let quarter = -8; quarter <= 8; quarter++) {
    const part = ((quarter * Math.PI) / 2 - start) / sweep;
    if (part > 0 && part < 1) points.push(segmentPoint(segment, part));
  }
  return boxOfPoints(points);
}
