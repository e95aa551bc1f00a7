// How true will a place of the drawing be found, when every mark is a pixel off and the lens bends as lenses do? To first order: the
// errors of the marks are carried through the fit to the place, those of the base line through the frame it gives.

import type { Vec2 } from "../../geometry/vector";
import { standardError } from "../../numeric/leastSquares";
import type { CameraFit } from "./cameraFit";
import { type PlaceSlopes, placeSlopes } from "./placeSlopes";

/** Standard deviation of the bend of hand-held cameras, as a part of the half diagonal in the corners of the picture (common practice). */
const EXPECTED_BEND = 0.02;

/** Both in the units of the centred paper, as standard errors in the plane. */
export interface ExpectedStray {
  /** By marks that are a pixel off alone. */
  readonly marks: number;
  /** With the bend of a lens that was not looked for. */
  readonly whole: number;
}

/** A base line marked in the same picture: it gives the drawing its frame, x along it from its start. Its ends, centred. */
export interface MarkedBase {
  readonly start: Vec2;
  readonly end: Vec2;
}

/** The expected stray as a function of places of the (centred) paper. `pixel`: the length of a pixel in the lens's frame. */
export function expectedStray({ numbers, solved, byBend }: CameraFit, pixel: number, base: MarkedBase | null): (at: Vec2) => ExpectedStray {
  const start = base && placeSlopes(numbers, base.start), end = base && placeSlopes(numbers, base.end);
  const none: Vec2 = { x: 0, y: 0 };
  return (at) => {
    const here = placeSlopes(numbers, at);
    /** What moves by `moved` is seen from the base line, which moves too. */
    const framed = (moved: Vec2, first: Vec2, last: Vec2): Vec2 => {
      if (!base) return moved;
      const turn = (last.y - first.y) / (base.end.x - base.start.x);
      return { x: moved.x - first.x + turn * (at.y - base.start.y), y: moved.y - first.y - turn * (at.x - base.start.x) };
    };
    const all = (of: (slopes: PlaceSlopes) => Vec2) => framed(of(here), start ? of(start) : none, end ? of(end) : none);
    const weights = numbers.map((_, k) => all(({ byNumber }) => byNumber[k] ?? none));
    const points = [standardError(solved, weights.map(({ x }) => x)), standardError(solved, weights.map(({ y }) => y))];
    const ends = ([0, 1] as const).flatMap((axis) => [
      framed(none, start ? start.byPicture[axis] : none, none), framed(none, none, end ? end.byPicture[axis] : none),
    ]).flatMap(({ x, y }) => [pixel * x, pixel * y]);
    const marks = Math.hypot(...points, ...ends);
    if (!byBend) return { marks, whole: marks };
    const bent = all((slopes) => slopes.byNumber.reduce(({ x, y }, one, k) => ({ x: x + one.x * (byBend[k] ?? 0), y: y + one.y * (byBend[k] ?? 0) }), slopes.byBend));
    return { marks, whole: Math.hypot(marks, EXPECTED_BEND * bent.x, EXPECTED_BEND * bent.y) };
  };
}
