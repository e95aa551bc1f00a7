// Where does the element at a place on the girth run? On a round pipe: parallel to the axis, at the radius of the
// neutral surface. Frame of the pipe: axis z, base at z = 0; θ from the front (-y), anticlockwise seen from above.

import type { Vec3 } from "../geometry/vector";

export interface Pipe {
  /** Radius of the neutral surface in mm: girth, cuts, views and pattern all use it. */
  readonly radius: number;
  /** π × mean diameter in mm. */
  readonly girth: number;
  /** Length of the uncut pipe in mm. */
  readonly length: number;
  /** Diameters in mm. */
  readonly outside: number;
  readonly inside: number;
  readonly mean: number;
  readonly thickness: number;
  readonly attitude: "upright" | "lying";
}

/**
 * The pipe from its stated diameter. Mean diameter: outside - t, inside + t (Cyclopedia of Drawing, 1906,
 * boiler-shell paragraph); thickness 0 makes the three equal.
 * @throws RangeError when a dimension is not positive or the wall leaves no mean diameter.
 */
export function roundPipe(
  size: { diameter: number; basis: "outside" | "inside" | "mean"; thickness: number; length: number; attitude: "upright" | "lying" },
): Pipe {
  const { diameter, basis, thickness, length, attitude } = size;
  const toMean = { outside: -thickness, inside: thickness, mean: 0 }[basis];
  const mean = diameter + toMean;
  if (!(mean > 0)) throw new RangeError(`invalid mean diameter: ${mean}; not in (0, ∞)`);
  if (!(length > 0)) throw new RangeError(`invalid length: ${length}; not in (0, ∞)`);
  return {
    radius: mean / 2, girth: Math.PI * mean, length, mean, outside: mean + thickness, inside: mean - thickness, thickness, attitude,
  };
}

/** The point of the surface at θ (radians) and height z (mm), in the pipe's own frame. */
export function pipePoint(pipe: Pipe, theta: number, z: number): Vec3 {
  return { x: pipe.radius * Math.sin(theta), y: -pipe.radius * Math.cos(theta), z };
}

/** The greatest dimension in mm, the measure for noise. */
export function pipeSize(pipe: Pipe): number {
  return Math.max(pipe.length, 2 * pipe.radius);
}
