// Where on the drawing is a point of the picture? From four or more known points, for any plane sheet pictured by any camera whose
// picture was not cropped.

import { type Vec2, distance } from "../../geometry/vector";
import type { Problem } from "../../job/problem";
import { type CameraFit, cameraFit } from "./cameraFit";
import { centred } from "./centred";
import { directHomography } from "./directHomography";
import { type Homography, depth, determinant, inverse, mapped, product } from "./homography";
import { bent, straightened } from "./lens";
import { type MarkedPoint, pointsProblem } from "./markedPoint";
import { strayAt } from "./strayAt";

/** Points from which on the bend of the lens is found too. */
export const LENS_POINTS = 6;
/** mm: where a pixel's slip moves the drawing farther than this, nothing can be read. */
export const MOST_UNSURE = 5;

export interface PictureSize {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

export interface Rectification {
  readonly size: PictureSize;
  /** mm on the paper to the straight picture, and back; the straight picture as in lens.ts. */
  readonly toPicture: Homography;
  readonly toPaper: Homography;
  /** Bend of the lens; null when there were too few points to look for it. */
  readonly lens: number | null;
  /** mm on the paper from each marked point to where its mark is found. */
  readonly residuals: readonly number[];
  /** mm: how far the least sure place of the drawing strays (standard error) when every mark strays by a pixel. */
  readonly unsure: number;
}

export type Rectified = { readonly ok: true; readonly rectification: Rectification } | { readonly ok: false; readonly problem: Problem };

/**
 * The rectification of a picture of `size` by its marked points, for a drawing within `region` (corners, mm on the paper). Refused:
 * too few or too many points, coincident, in line, in an order no camera sees, or so placed that the drawing is not fixed by them.
 * @throws RangeError for numbers that are not finite.
 */
export function rectification(points: readonly MarkedPoint[], size: PictureSize, region: readonly Vec2[]): Rectified {
  if (![size.width, size.height, ...region.flatMap(({ x, y }) => [x, y]), ...points.flatMap(({ picture, paper }) => [picture.x, picture.y, paper.x, paper.y])].every(Number.isFinite)) {
    throw new RangeError("a point is not finite");
  }
  const problem = pointsProblem(points);
  if (problem) return { ok: false, problem };
  const paper = centred(points.map((point) => point.paper));
  const picture = points.map((point) => inLensFrame(size, point.picture));
  const first = directHomography(paper.points, picture);
  // Points in line are known by now: what is left is a middle of no depth, as of a rectangle with two corners exchanged.
  if (!first) return refused("points-crossed");
  if (!isSeenFromFront(first, paper.points)) return refused("points-crossed");
  const fit = cameraFit(first, paper.points, picture, 2 / Math.hypot(size.width, size.height), points.length >= LENS_POINTS);
  if (!fit) return refused("points-unsure");
  const centredTo = homographyOf(fit);
  if (!isSeenFromFront(centredTo, paper.points)) return refused("points-crossed");
  const corners = region.map((corner) => mapped(paper.to, corner));
  const unsure = isSeenFromFront(centredTo, corners) ? Math.max(...corners.map((corner) => strayAt(fit, corner) / paper.to[0])) : Infinity;
  if (!(unsure <= MOST_UNSURE)) return refused("points-unsure");
  const toPicture = product(centredTo, paper.to);
  const found = { size, toPicture, toPaper: inverse(toPicture), lens: fit.numbers[8] ?? null, unsure };
  const backs = points.map((point) => paperPoint(found, point.picture));
  const residuals = backs.flatMap((back, i) => (back ? [distance(back, points[i]?.paper ?? back)] : []));
  // A mark beyond the horizon of the sheet that the others see.
  if (residuals.length < points.length) return refused("points-crossed");
  return { ok: true, rectification: { ...found, residuals } };
}

type Mapping = Pick<Rectification, "size" | "toPicture" | "toPaper" | "lens">;

/** The point of the paper (mm) pictured at a pixel place; null beyond the paper's horizon. */
export function paperPoint({ size, toPaper, lens }: Mapping, place: Vec2): Vec2 | null {
  const straight = straightened(lens ?? 0, inLensFrame(size, place));
  return depth(toPaper, straight) > 0 ? mapped(toPaper, straight) : null;
}

/** The pixel place at which a point of the paper (mm) is pictured; null for one that lies behind the camera. */
export function picturePoint({ size, toPicture, lens }: Mapping, point: Vec2): Vec2 | null {
  if (!(depth(toPicture, point) > 0)) return null;
  const { x, y } = bent(lens ?? 0, mapped(toPicture, point));
  const half = Math.hypot(size.width, size.height) / 2;
  return { x: size.width / 2 + half * x, y: size.height / 2 - half * y };
}

function inLensFrame({ width, height }: PictureSize, { x, y }: Vec2): Vec2 {
  const half = Math.hypot(width, height) / 2;
  return { x: (x - width / 2) / half, y: (height / 2 - y) / half };
}

/** Whether all the points lie before the camera and the sheet shows its face: the paper keeps its hand at each of them. */
function isSeenFromFront(h: Homography, points: readonly Vec2[]): boolean {
  return points.every((point) => determinant(h) * depth(h, point) > 0 && depth(h, point) * h[8] > 0);
}

function homographyOf({ numbers }: CameraFit): Homography {
  const [h0 = 0, h1 = 0, h2 = 0, h3 = 0, h4 = 0, h5 = 0, h6 = 0, h7 = 0] = numbers;
  return [h0, h1, h2, h3, h4, h5, h6, h7, 1];
}

function refused(code: Problem["code"]): Rectified {
  return { ok: false, problem: { code, field: "points" } };
}
