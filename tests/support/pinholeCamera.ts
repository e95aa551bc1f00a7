import type { Vec2 } from "../../src/core/index";

// A camera over a sheet of paper, from first principles: rotate, divide by depth, bend by the radial polynomial that camera calibration
// uses (D. Brown, Close-range camera calibration, Photogrammetric Engineering 37 (1971); from memory), scale by the focal length in
// pixels. It shares nothing with the rectification: no homography, and another model of the lens.

export interface Pinhole {
  /** Degrees: how far the camera looks aslant, towards which side of the paper, and how it is turned about its axis. */
  readonly tilt: number;
  readonly azimuth: number;
  readonly roll: number;
  /** mm from the camera to the middle of the paper, and that middle. */
  readonly distance: number;
  readonly middle: Vec2;
  /** Pixels. */
  readonly focal: number;
  readonly width: number;
  readonly height: number;
  /** Pixels by which the axis misses the middle of the picture. */
  readonly off: Vec2;
  /** Of the radial polynomial 1 + k1 r² + k2 r⁴, r in focal lengths. */
  readonly k1: number;
  readonly k2: number;
}

/** A picture of 4000 × 3000 pixels of an A3 sheet at 0.6 m by a lens as wide as those of hand-held cameras. */
export const overA3: Pinhole = {
  tilt: 0, azimuth: 0, roll: 0, distance: 600, middle: { x: 210, y: 148.5 }, focal: 2900, width: 4000, height: 3000, off: { x: 0, y: 0 }, k1: 0, k2: 0,
};

/** The pixel place (from the upper left, y down) of a point of the paper (mm, y up). */
export function photographed(camera: Pinhole, { x, y }: Vec2): Vec2 {
  const rad = Math.PI / 180;
  const [a, t, r] = [camera.azimuth * rad, camera.tilt * rad, camera.roll * rad];
  // About the middle: the azimuth in the plane of the paper, the tilt about the axis across it, the roll about the camera's axis.
  const [px, py] = [x - camera.middle.x, y - camera.middle.y];
  const [u, v] = [Math.cos(a) * px + Math.sin(a) * py, -Math.sin(a) * px + Math.cos(a) * py];
  const [up, ahead] = [Math.cos(t) * v, camera.distance + Math.sin(t) * v];
  const [right, above] = [Math.cos(r + a) * u - Math.sin(r + a) * up, Math.sin(r + a) * u + Math.cos(r + a) * up];
  const [nx, ny] = [right / ahead, above / ahead];
  const square = nx * nx + ny * ny;
  const bend = 1 + camera.k1 * square + camera.k2 * square * square;
  return { x: camera.width / 2 + camera.off.x + camera.focal * bend * nx, y: camera.height / 2 + camera.off.y - camera.focal * bend * ny };
}
