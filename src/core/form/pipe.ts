// Where does the element at a place on the girth run? On a round pipe: parallel to the axis. Two surfaces of its wall
// matter: the one whose girth is developed, and the one on which cuts are found; by default both are the mean one.
// Frame of the pipe: axis z, base at z = 0; θ from the front (-y), anticlockwise seen from above.

import type { Vec3 } from "../geometry/vector";
import type { FabricationChoices } from "../job/fabricationChoices";

export interface Pipe {
  /** Radius in mm of the surface that is developed: the neutral surface, or the middle of a wrapped template. */
  readonly radius: number;
  /** Its circumference in mm. */
  readonly girth: number;
  /** Its diameter in mm. */
  readonly developed: number;
  /** Radii in mm of the surfaces on which cuts are found: one, or inside and outside when an edge must clear both. */
  readonly cutRadii: readonly number[];
  /** Radius in mm of the surface on which cuts are placed ("at the low point of the pipe"): the greatest of those. */
  readonly cutRadius: number;
  /** Length of the uncut pipe in mm. */
  readonly length: number;
  /** Diameters in mm; a wall thicker than the mean diameter leaves an inside below 0. */
  readonly outside: number;
  readonly inside: number;
  readonly mean: number;
  /** mm, 0 for a surface without a wall. */
  readonly thickness: number;
  readonly attitude: "upright" | "lying";
}

/** Which surfaces of the wall are meant: see the section `fabrication` of a job. */
export type WallChoices = Pick<FabricationChoices, "purpose" | "surface" | "kFactor" | "paper">;

const MEAN: WallChoices = { purpose: "blank", surface: "mean", kFactor: 0.5, paper: 0 };

/**
 * The pipe from its stated diameter. Girth: π × the neutral diameter, mean + (2K - 1) t; of a template wrapped round it
 * π × (outside + paper), with the cuts on the outside (common practice). Mean diameter: outside - t, inside + t
 * (Cyclopedia of Drawing, 1906, boiler-shell paragraph); thickness 0 makes the three equal.
 * @throws RangeError when the diameter, the mean or the developed diameter or the length is not positive, or the thickness negative.
 */
export function roundPipe(
  size: { diameter: number; basis: "outside" | "inside" | "mean"; thickness: number; length: number; attitude: "upright" | "lying" },
  wall: WallChoices = MEAN,
): Pipe {
  const { diameter, basis, thickness, length, attitude } = size;
  if (!(diameter > 0)) throw new RangeError(`invalid diameter: ${diameter}; not in (0, ∞)`);
  if (!(thickness >= 0)) throw new RangeError(`invalid thickness: ${thickness}; not in [0, ∞)`);
  const toMean = { outside: -thickness, inside: thickness, mean: 0 }[basis];
  const mean = diameter + toMean;
  if (!(mean > 0)) throw new RangeError(`invalid mean diameter: ${mean}; not in (0, ∞)`);
  if (!(length > 0)) throw new RangeError(`invalid length: ${length}; not in (0, ∞)`);
  const [outside, inside] = [mean + thickness, mean - thickness];
  const developed = wall.purpose === "wrap" ? outside + wall.paper : mean + (2 * wall.kFactor - 1) * thickness;
  if (!(developed > 0)) throw new RangeError(`invalid neutral diameter: ${developed}; not in (0, ∞)`);
  const surface = wall.purpose === "wrap" ? "outside" : wall.surface;
  const cutRadii = { mean: [mean], outside: [outside], inside: [inside], clear: [inside, outside] }[surface].map((diameter) => diameter / 2);
  return {
    radius: developed / 2, girth: Math.PI * developed, developed, cutRadii, cutRadius: Math.max(...cutRadii),
    length, mean, outside, inside, thickness, attitude,
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
