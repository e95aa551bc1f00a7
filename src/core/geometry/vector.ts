// Points and directions in the plane and in space; mm.

export interface Vec2 {
  readonly x: number;
  readonly y: number;
}

export interface Vec3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Length of (x, y). Math.hypot guards against overflow, which mm never reach, at many times the cost. */
export function lengthOf(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}

/** Distance between two points of the plane. */
export function distance(a: Vec2, b: Vec2): number {
  return lengthOf(b.x - a.x, b.y - a.y);
}

/** The unit vector along (x, y). @throws RangeError for the zero vector. */
export function unit(x: number, y: number): Vec2 {
  const length = lengthOf(x, y);
  if (!(length > 0)) throw new RangeError(`no direction: (${x}, ${y})`);
  return { x: x / length, y: y / length };
}
