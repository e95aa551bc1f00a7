// Where on the drawing is a point of the picture? From four or more known points, for any plane sheet pictured by any camera whose
// picture was not cropped.

import { type Vec2, distance } from "../../geometry/vector";
import type { Problem } from "../../job/problem";
import { type CameraFit, cameraFit } from "./cameraFit";
import { centred } from "./centred";
import { directHomography } from "./directHomography";
import { type MarkedBase, expectedStray } from "./expectedStray";
import { type Homography, depth, determinant, inverse, mapped, product } from "./homography";
import { bent, straightened } from "./lens";
import { type MarkedPoint, pointsProblem } from "./markedPoint";

/** Points from which on the bend of the lens is found too. */
export const LENS_POINTS = 6;
/** mm to which a drawing can be measured by hand: where it is less sure, more points are wanted. */
export const SURE = 0.3;
/** Places looked at along each side of the drawing. */
const PLACES = 5;
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
  /** mm: how far the least sure place of the drawing strays (standard error) when every mark strays by a pixel, and a lens not looked for bends as lenses do; and that place. */
  readonly unsure: number;
  readonly unsureAt: Vec2;
}

export type Rectified = { readonly ok: true; readonly rectification: Rectification } | { readonly ok: false; readonly problem: Problem };

/**
 * The rectification of a picture of `size` by its marked points, for a drawing within `region` (corners in their order round, mm on the
 * paper); `base`: pixel places of the ends of the base line, when that was marked to give the paper's frame. Refused:
 * too few or too many points, coincident, in line, in an order no camera sees, or so placed that the drawing is not fixed by them.
 * @throws RangeError for numbers that are not finite.
 */
export function rectification(points: readonly MarkedPoint[], size: PictureSize, region: readonly Vec2[], base: MarkedBase | null = null): Rectified {
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
  const pixel = 2 / Math.hypot(size.width, size.height);
  const fit = cameraFit(first, paper.points, picture, pixel, points.length >= LENS_POINTS);
  if (!fit) return refused("points-unsure");
  const centredTo = homographyOf(fit);
  if (!isSeenFromFront(centredTo, paper.points)) return refused("points-crossed");
  const corners = region.map((corner) => mapped(paper.to, corner));
  if (!isSeenFromFront(centredTo, corners)) return refused("points-unsure");
  const toPicture = product(centredTo, paper.to);
  const mapping = { size, toPicture, toPaper: inverse(toPicture), lens: fit.numbers[8] ?? null };
  const ends = base && centredBase(mapping, base, paper.to);
  if (base && !ends) return refused("points-crossed");
  const sureness = leastSure(expectedStray(fit, pixel, ends), placesIn(region), paper.to);
  if (!sureness) return refused("points-unsure");
  const found = { ...mapping, ...sureness };
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

/** The least sure of some places; null where a pixel's slip alone moves one too far. */
function leastSure(strayAt: ReturnType<typeof expectedStray>, places: readonly Vec2[], to: Homography): Pick<Rectification, "unsure" | "unsureAt"> | null {
  const strays = places.map((place) => {
    const { marks, whole } = strayAt(mapped(to, place));
    return { place, marks: marks / to[0], whole: whole / to[0] };
  });
  if (!strays.every(({ marks }) => marks <= MOST_UNSURE)) return null;
  const { whole, place } = strays.reduce((most, one) => (one.whole > most.whole ? one : most));
  return { unsure: whole, unsureAt: place };
}

/** Places all over a region with four corners. */
function placesIn(region: readonly Vec2[]): Vec2[] {
  const [a, b, c, d] = region;
  if (!a || !b || !c || !d) throw new RangeError(`invalid region: ${region.length} corners; not 4`);
  const between = (p: Vec2, q: Vec2, part: number): Vec2 => ({ x: p.x + part * (q.x - p.x), y: p.y + part * (q.y - p.y) });
  const parts = Array.from({ length: PLACES }, (_, i) => i / (PLACES - 1));
  return parts.flatMap((up) => parts.map((across) => between(between(a, b, across), between(d, c, across), up)));
}

function centredBase(mapping: Mapping, { start, end }: MarkedBase, to: Homography): MarkedBase | null {
  const [from, until] = [paperPoint(mapping, start), paperPoint(mapping, end)];
  return from && until && { start: mapped(to, from), end: mapped(to, until) };
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
