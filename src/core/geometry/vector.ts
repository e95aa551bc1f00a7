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

/** Distance between two points of the plane. */
export function distance(a: Vec2, b: Vec2): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The unit vector along (x, y). @throws RangeError for the zero vector. */
export function unit(x: number, y: number): Vec2 {
  const length = Math.hypot(x, y);
  if (!(length > 0)) throw new RangeError(`no direction: (${x}, ${y})`);
  return { x: x / length, y: y / length };
}
