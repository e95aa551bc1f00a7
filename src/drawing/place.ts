// Where a view stands on the sheet: model coordinates to sheet millimetres and back.

import type { Segment, Vec2 } from "../core/index";

export interface Place {
  /** Where the model's origin falls on the sheet, mm. */
  readonly origin: Vec2;
  /** Sheet mm a model mm. */
  readonly scale: number;
  /** Degrees anticlockwise: -90 for what belongs to a lying pipe, which is an upright one tipped over to the right. */
  readonly turn: 0 | -90;
}

/** A point of the model on the sheet. */
export function onSheet({ origin, scale, turn }: Place, { x, y }: Vec2): Vec2 {
  return turn === 0
    ? { x: origin.x + scale * x, y: origin.y + scale * y }
    : { x: origin.x + scale * y, y: origin.y - scale * x };
}

/** A point of the sheet in the model: the inverse of `onSheet`. */
export function fromSheet({ origin, scale, turn }: Place, { x, y }: Vec2): Vec2 {
  const a = (x - origin.x) / scale;
  const b = (y - origin.y) / scale;
  return turn === 0 ? { x: a, y: b } : { x: -b, y: a };
}

/** A segment of the model on the sheet. */
export function segmentOnSheet(place: Place, segment: Segment): Segment {
  const from = onSheet(place, segment.from);
  const to = onSheet(place, segment.to);
  if (segment.kind === "line") return { kind: "line", from, to };
  if (segment.kind === "arc") {
    return { kind: "arc", from, to, centre: onSheet(place, segment.centre), anticlockwise: segment.anticlockwise };
  }
  return { kind: "cubic", from, c1: onSheet(place, segment.c1), c2: onSheet(place, segment.c2), to };
}
