// How does the place found for a pixel of the picture move when the camera is taken to be a little otherwise, or the pixel a little off?

import type { Vec2 } from "../../geometry/vector";
import { type CameraNumbers, pictured } from "./cameraFit";

export interface PlaceSlopes {
  /** On the (centred) paper, by each number of the camera. */
  readonly byNumber: readonly Vec2[];
  /** By the pixel's place in the lens's frame, across and up. */
  readonly byPicture: readonly [Vec2, Vec2];
  /** By the bend of a lens that is taken to be straight, the numbers of the camera staying. */
  readonly byBend: Vec2;
}

/** Of a central difference. */
const NUDGE = 1e-6;

/** The slopes at a place of the (centred) paper, to first order. */
export function placeSlopes(numbers: CameraNumbers, at: Vec2): PlaceSlopes {
  const slope = (moved: (by: number) => Vec2): Vec2 => {
    const [after, before] = [moved(NUDGE), moved(-NUDGE)];
    return { x: (after.x - before.x) / (2 * NUDGE), y: (after.y - before.y) / (2 * NUDGE) };
  };
  const x = slope((by) => pictured(numbers, { ...at, x: at.x + by })), y = slope((by) => pictured(numbers, { ...at, y: at.y + by }));
  const area = x.x * y.y - x.y * y.x;
  const onPaper = (moved: Vec2): Vec2 => ({ x: (y.y * moved.x - y.x * moved.y) / area, y: (x.x * moved.y - x.y * moved.x) / area });
  const withNumber = (k: number, by: number) => numbers.map((value, i) => (i === k ? value + by : value));
  const back = ({ x: across, y: up }: Vec2): Vec2 => ({ x: -across, y: -up });
  return {
    byNumber: numbers.map((_, k) => back(onPaper(slope((by) => pictured(withNumber(k, by), at))))),
    byPicture: [onPaper({ x: 1, y: 0 }), onPaper({ x: 0, y: 1 })],
    byBend: onPaper(slope((by) => pictured([...numbers.slice(0, 8), (numbers[8] ?? 0) + by], at))),
  };
}
