// Angles: radians inside, degrees at the edges; one turn is [0, 2π).

export const TURN = 2 * Math.PI;

/** Degrees to radians. */
export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Radians to degrees. */
export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** The same angle (radians) in [0, 2π), to rounding; what rounding would put outside that range is 0. */
export function wrapTurn(angle: number): number {
  const wrapped = angle - TURN * Math.floor(angle / TURN);
  return wrapped < 0 || wrapped >= TURN ? 0 : wrapped;
}

/** The least turn (radians, 0 to π) between two angles. */
export function angleBetween(a: number, b: number): number {
  const turn = wrapTurn(a - b);
  return Math.min(turn, TURN - turn);
}
