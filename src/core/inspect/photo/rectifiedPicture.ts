// What does the picture look like from straight above, at true scale? Every pixel of the new picture is looked up in the old one,
// between its four neighbours.

import type { Rectification } from "./rectification";
import { picturePoint } from "./rectification";

/** Pixels by rows from the upper left, four bytes each: red, green, blue, opacity. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** A rectangle of the paper, mm. */
export interface PaperRegion {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Grey of what the picture does not show. */
const BEYOND = 225;
/** Pixels of a rectified picture. */
const MOST_PIXELS = 6e6;

/** Pixels a mm so that the picture of a region loses little of what was photographed and stays a picture that can be shown. */
export function pixelsPerMm(found: Rectification, region: PaperRegion): number {
  const [a, b] = [picturePoint(found, { x: region.left, y: region.bottom }), picturePoint(found, { x: region.right, y: region.top })];
  const [width, height] = [region.right - region.left, region.top - region.bottom];
  const seen = a && b ? Math.hypot(b.x - a.x, b.y - a.y) / Math.hypot(width, height) : Infinity;
  return Math.min(1.4 * seen, Math.sqrt(MOST_PIXELS / (width * height)));
}

/** The region of the paper as pictured, `density` pixels a mm. `found` belongs to a picture of the size of `picture`. */
export function rectifiedPicture(picture: Pixels, found: Rectification, { left, right, bottom, top }: PaperRegion, density: number): Pixels {
  const [width, height] = [Math.max(1, Math.round((right - left) * density)), Math.max(1, Math.round((top - bottom) * density))];
  const data = new Uint8ClampedArray(4 * width * height);
  for (let row = 0, at = 0; row < height; row++) {
    const y = top - ((row + 0.5) / height) * (top - bottom);
    for (let column = 0; column < width; column++, at += 4) {
      const x = left + ((column + 0.5) / width) * (right - left);
      const place = picturePoint(found, { x, y });
      if (!place || !copied(picture, place.x - 0.5, place.y - 0.5, data, at)) data.fill(BEYOND, at, at + 3);
      data[at + 3] = 255;
    }
  }
  return { width, height, data };
}

/** Writes the colour at a place, weighed between its four pixels; false outside the picture. */
function copied({ width, height, data }: Pixels, x: number, y: number, into: Uint8ClampedArray, at: number): boolean {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  if (column < 0 || row < 0 || column + 1 >= width || row + 1 >= height) return false;
  const [u, v] = [x - column, y - row];
  const first = 4 * (row * width + column);
  for (let c = 0; c < 3; c++) {
    const [a = 0, b = 0] = [data[first + c], data[first + 4 + c]];
    const [d = 0, e = 0] = [data[first + 4 * width + c], data[first + 4 * width + 4 + c]];
    into[at + c] = (1 - v) * ((1 - u) * a + u * b) + v * ((1 - u) * d + u * e);
  }
  return true;
}
