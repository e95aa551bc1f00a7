// An allowance along a run of edge, its two ends notched at 45° (common practice: so that laps and hems clear the
// corner when they are folded).

import { joinedAtCrossing } from "../geometry/chainCrossing";
import type { Segment } from "../geometry/segment";
import { segmentTangent } from "../geometry/segmentTangent";
import type { Vec2 } from "../geometry/vector";
import { offsetRun } from "./offsetRun";

/** The strip's outer boundary from the start of the run to its end, or why and where it cannot be. */
export type NotchedStrip =
  | { readonly ok: true; readonly notch: Segment; readonly outer: readonly Segment[]; readonly lastNotch: Segment }
  | { readonly ok: false; readonly code: "allowance-crosses-itself" | "allowance-too-wide"; readonly at: Vec2 };

/** A notch's line is drawn this many times as long as on a straight edge, to reach a parallel that curves away. */
const REACH = 4;

/**
 * The strip of `width` mm (> 0) to the right of a run of edge, within `tolerance` mm. Too wide: the run is so short
 * that its two notches meet.
 */
export function notchedStrip(run: readonly Segment[], width: number, tolerance: number): NotchedStrip {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last) throw new RangeError("a run without segments");
  const offset = offsetRun(run, width, tolerance);
  if (!offset.ok) return { ok: false, code: "allowance-crosses-itself", at: offset.at };
  const start = notchLine(first.from, segmentTangent(first, 0), 1, width);
  const end = notchLine(last.to, segmentTangent(last, 1), -1, width);
  const begun = joinedAtCrossing([start], offset.segments);
  const whole = begun && joinedAtCrossing(begun.segments, [{ ...end, from: end.to, to: end.from }]);
  const tooWide: NotchedStrip = { ok: false, code: "allowance-too-wide", at: last.to };
  if (!whole || whole.cutFirst === 0) return tooWide;
  const [notch, lastNotch] = [whole.segments[0], whole.segments.at(-1)];
  return notch && lastNotch ? { ok: true, notch, outer: whole.segments.slice(1, -1), lastNotch } : tooWide;
}

/** From the corner outwards, half-way between square to the edge and along it (way 1: forwards, -1: backwards). */
function notchLine(from: Vec2, along: Vec2, way: 1 | -1, width: number): Segment {
  const reach = width * REACH;
  return { kind: "line", from, to: { x: from.x + reach * (along.y + way * along.x), y: from.y + reach * (way * along.y - along.x) } };
}
