// The same item elsewhere on the sheet.

import type { Segment, Vec2 } from "../core/index";
import { moveBox } from "./box";
import type { Item } from "./display";

/** The item moved by (x, y) mm. */
export function moveItem(item: Item, by: Vec2): Item {
  const move = ({ x, y }: Vec2): Vec2 => ({ x: x + by.x, y: y + by.y });
  switch (item.kind) {
    case "path":
      return { ...item, segments: item.segments.map((segment) => moveSegment(segment, move)) };
    case "circle":
      return { ...item, centre: move(item.centre) };
    case "text":
      return { ...item, at: move(item.at) };
    case "arrowhead":
      return { ...item, tip: move(item.tip) };
    case "surface":
      return { ...item, loops: item.loops.map((loop) => loop.map(move)) };
    case "group":
      return { ...item, move: move(item.move), clip: moveBox(item.clip, by) };
  }
}

function moveSegment(segment: Segment, move: (point: Vec2) => Vec2): Segment {
  const from = move(segment.from), to = move(segment.to);
  if (segment.kind === "line") return { kind: "line", from, to };
  if (segment.kind === "arc") return { ...segment, from, to, centre: move(segment.centre) };
  return { kind: "cubic", from, c1: move(segment.c1), c2: move(segment.c2), to };
}
