// The scales of drawings, and how one is written.

/** Paper mm a real mm, largest first (ISO 5455). */
export const SCALES = [10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50, 1 / 100, 1 / 200, 1 / 500, 1 / 1000] as const;

/** "1:2", "5:1" */
export function scaleText(scale: number): string {
  return scale >= 1 ? `${Number(scale.toFixed(3))}:1` : `1:${Number((1 / scale).toFixed(3))}`;
}
