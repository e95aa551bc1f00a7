// Which homography carries these points to those? The direct linear transformation of centred points: Hartley and Zisserman, Multiple
// View Geometry in Computer Vision, chapter 4 (from memory). The ninth number is set to 1: it is the depth at the middle of the
// points, which lies between the depths of the points, so that it never vanishes for a plane seen from one side.

import type { Vec2 } from "../../geometry/vector";
import { leastSquares } from "../../numeric/leastSquares";
import { centred } from "./centred";
import { type Homography, product } from "./homography";

/** Least algebraic error, exact for four points; null when the points do not fix one (coincident, all but one in line) or when it has no depth at their middle. */
export function directHomography(from: readonly Vec2[], to: readonly Vec2[]): Homography | null {
  const [a, b] = [centred(from), centred(to)];
  const rows = a.points.flatMap(({ x, y }, i) => {
    const { x: u, y: v } = b.points[i] ?? { x: NaN, y: NaN };
    return [
      { row: [x, y, 1, 0, 0, 0, -u * x, -u * y], right: u },
      { row: [0, 0, 0, x, y, 1, -v * x, -v * y], right: v },
    ];
  });
  const solved = leastSquares(rows.map(({ row }) => row), rows.map(({ right }) => right));
  if (!solved) return null;
  const [h0 = 0, h1 = 0, h2 = 0, h3 = 0, h4 = 0, h5 = 0, h6 = 0, h7 = 0] = solved.values;
  return product(b.from, product([h0, h1, h2, h3, h4, h5, h6, h7, 1], a.to));
}
