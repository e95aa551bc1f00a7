// How small is nothing? The only tolerances of the core.

/** Relative noise of a well-conditioned result: multiply by the size of the model. */
export const NOISE = 1e-12;

/**
 * Relative noise of a place that is known only through a square root of a rounded number
 * (a crossing near a vertical tangent): sqrt(2^-52) is 1.5e-8, with room for a chain of such steps.
 */
export const ROOT_NOISE = 1e-7;

/** Greatest distance in mm of a drawn edge from the true one, unless the caller asks otherwise. */
export const CHORD_TOLERANCE = 0.005;

/** Angles (radians) closer than this are one place on the girth. */
export const ANGLE_NOISE = 1e-9;
