// The kept stretches of any element, exactly: find its span, meet its faces.

import { TURN } from "../numeric/angle";
import { ANGLE_NOISE, ROOT_NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter, FaceRef } from "../cut/cutter";
import { heightOn } from "../cut/heightOn";
import type { Span } from "./spans";

/** A kept stretch of an element, z = from to z = to in mm, with the faces that end it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly fromFace: FaceRef;
  readonly toFace: FaceRef;
}

/** The heights of a span's stretches on the element at θ (radians, any turn), from low to high. */
export function stretchesOn(cutters: readonly Cutter[], span: Span, theta: number): Stretch[] {
  return span.stretches.map(({ fromFace, toFace }) => ({
    from: heightOn(cutters, fromFace, theta), to: heightOn(cutters, toFace, theta), fromFace, toFace,
  }));
}

/**
 * The kept stretches just before and just after the element at θ (any turn), in growing θ. Both are the same list
 * unless the element is the border of two spans.
 */
export function stretchesAround(
  pipe: Pipe, cutters: readonly Cutter[], spans: readonly Span[], theta: number,
): { before: Stretch[]; after: Stretch[] } {
  const start = spans[0]?.from ?? 0;
  const place = start + (((theta - start) % TURN) + TURN) % TURN;
  const k = lastSpanFrom(spans, place);
  const span = spanAt(spans, k);
  if (place - span.from < ANGLE_NOISE) return sides(k - 1, k);
  if (span.to - place < ANGLE_NOISE) return sides(k, k + 1);
  const stretches = stretchesOn(cutters, span, theta);
  return { before: stretches, after: stretches };

  function sides(k0: number, k1: number) {
    const noise = ROOT_NOISE * pipeSize(pipe);
    return {
      before: withoutTouching(stretchesOn(cutters, spanAt(spans, k0), theta), noise),
      after: withoutTouching(stretchesOn(cutters, spanAt(spans, k1), theta), noise),
    };
  }
}

/**
 * At a border a gap or a stretch may have closed to a point: stretches that touch are one, and a stretch without length
 * is left out beside others. Alone it stays: it is the tip where the material begins.
 */
function withoutTouching(stretches: readonly Stretch[], noise: number): Stretch[] {
  const whole: Stretch[] = [];
  for (const stretch of stretches) {
    const last = whole.at(-1);
    if (last && stretch.from - last.to <= noise) whole[whole.length - 1] = { ...last, to: stretch.to, toFace: stretch.toFace };
    else whole.push(stretch);
  }
  const long = whole.filter(({ from, to }) => to - from > noise);
  return long.length > 0 ? long : whole.slice(0, 1);
}

/** The span number k, counted round the girth. @throws RangeError when there are no spans. */
export function spanAt(spans: readonly Span[], k: number): Span {
  const span = spans[(k + spans.length) % spans.length];
  if (!span) throw new RangeError("no spans");
  return span;
}

function lastSpanFrom(spans: readonly Span[], place: number): number {
  let low = 0;
  let high = spans.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (spanAt(spans, middle).from <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}
