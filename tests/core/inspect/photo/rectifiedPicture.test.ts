import { expect, test } from "vitest";
import { pixelsPerMm, rectification, rectifiedPicture, type Pixels } from "../../../../src/core/index";
import { expectClose } from "../../../support/approximate";
import { overA3, photographed } from "../../../support/pinholeCamera";

const camera = { ...overA3, tilt: 35, azimuth: 30, roll: -8, focal: 290, width: 400, height: 300, k1: -0.03 };
const known = [0, 0.5, 1].flatMap((v) => [0, 0.5, 1].map((u) => ({ x: 420 * u, y: 297 * v })));
const region = { left: 0, right: 420, bottom: 0, top: 297 };

function found() {
  const outcome = rectification(known.map((paper) => ({ paper, picture: photographed(camera, paper) })), camera, known);
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.rectification;
}

/** A picture of a sheet on which red grows along x and green along y, made by asking the camera where places of the sheet fall. */
function picture(): Pixels {
  const { width, height } = camera;
  const data = new Uint8ClampedArray(4 * width * height);
  for (let x = -60; x < 480; x += 0.4) {
    for (let y = -60; y < 360; y += 0.4) {
      const place = photographed(camera, { x, y });
      const [column, row] = [Math.floor(place.x), Math.floor(place.y)];
      if (column < 0 || row < 0 || column >= width || row >= height) continue;
      data.set([(x + 60) * 0.45, (y + 60) * 0.55, 0, 255], 4 * (row * width + column));
    }
  }
  return { width, height, data };
}

test("rectifiedPicture shows every place of the paper where it lies", () => {
  const straight = rectifiedPicture(picture(), found(), region, 0.5);
  expect([straight.width, straight.height]).toEqual([210, 149]);
  for (const [x, y] of [[20, 30], [210, 150], [400, 280], [40, 270], [390, 20]] as const) {
    const at = 4 * (Math.floor((297 - y) * 0.5) * straight.width + Math.floor(x * 0.5));
    expectClose(straight.data[at]! / 0.45 - 60, x, 4.5);
    expectClose(straight.data[at + 1]! / 0.55 - 60, y, 4.5);
    expect(straight.data[at + 3]).toBe(255);
  }
});

test("rectifiedPicture is even grey where the picture does not reach", () => {
  const { data } = rectifiedPicture(picture(), found(), { left: 5000, right: 5010, bottom: 0, top: 10 }, 1);
  expect([...data.slice(0, 4)]).toEqual([225, 225, 225, 255]);
});

test("pixelsPerMm follows the picture, and stays within six million pixels", () => {
  expect(pixelsPerMm(found(), region)).toBeGreaterThan(0.4);
  expect(pixelsPerMm(found(), region)).toBeLessThan(1.2);
  const fine = { ...found(), size: { width: 40000, height: 30000 } };
  expectClose(pixelsPerMm(fine, region) ** 2 * 420 * 297, 6e6, 1);
});
