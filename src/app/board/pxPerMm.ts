/** Bounds of CSS pixels a sheet millimetre: lettering of 3.5 mm stays readable on a phone and does not crowd a wide window. */
const least = 2.35;
const most = 3.9;

/** How large a millimetre of the board's sheet is drawn in a window of this size: the larger the window, the larger the lettering. */
export function pxPerMm(width: number, height: number): number {
  return Math.min(most, Math.max(least, Math.sqrt(width * height) / 310));
}
