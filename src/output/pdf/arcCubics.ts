// A circular arc as cubics, since PDF knows no arcs. Control points at 4/3 tan(φ/4) of the radius along the tangents, which puts
// the middle of each piece on the circle (elementary); the piece then strays outwards by at most about 4/27 · sin⁶(φ/4) / cos²(φ/4)
// of the radius (T. Dokken and others, "Good approximation of circles by curvature-continuous Bézier curves", 1990).

import { type Arc, type Cubic, arcSweep } from "../../core/index";

/** The arc within `tolerance` mm, ends kept to the bit. */
export function arcCubics(arc: Arc, tolerance: number): Cubic[] {
  const { start, sweep, radius } = arcSweep(arc);
  const count = piecesOf(Math.abs(sweep), radius, tolerance);
  const turn = sweep / count;
  const reach = (4 / 3) * Math.tan(turn / 4) * radius;
  const at = (i: number) => {
    if (i === 0) return arc.from;
    if (i === count) return arc.to;
    return { x: arc.centre.x + radius * Math.cos(start + i * turn), y: arc.centre.y + radius * Math.sin(start + i * turn) };
  };
  return Array.from({ length: count }, (_, i): Cubic => {
    const from = at(i), to = at(i + 1), a = start + i * turn, b = a + turn;
    const c1 = { x: from.x - reach * Math.sin(a), y: from.y + reach * Math.cos(a) };
    const c2 = { x: to.x + reach * Math.sin(b), y: to.y - reach * Math.cos(b) };
    return { kind: "cubic", from, c1, c2, to };
  });
}

function piecesOf(sweep: number, radius: number, tolerance: number): number {
  let count = Math.ceil(sweep / (Math.PI / 2) - 1e-9);
  while (strayed(sweep / count, radius) > tolerance) count += 1;
  return count;
}

function strayed(turn: number, radius: number): number {
  return ((4 / 27) * Math.sin(turn / 4) ** 6 * radius) / Math.cos(turn / 4) ** 2;
}
