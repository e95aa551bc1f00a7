// When numbers stand too close, every how manyth is written?

/** Steps tried one after the other. */
export const STEPS = [1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 45, 60, 90, 180] as const;
