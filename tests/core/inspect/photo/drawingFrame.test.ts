import { expect, test } from "vitest";
import { inDrawingFrame, paperPoint, rectification } from "../../../../src/core/index";
import { expectClose } from "../../../support/approximate";
import { overA3, photographed } from "../../../support/pinholeCamera";

const camera = { ...overA3, tilt: 30, azimuth: 20, roll: 5 };
const sheet = [{ x: 0, y: 0 }, { x: 420, y: 0 }, { x: 420, y: 297 }, { x: 0, y: 297 }].map((paper) => ({ paper, picture: photographed(camera, paper) }));
const [start, end] = [{ x: 40, y: 60 }, { x: 40 + 280 * Math.cos(0.05), y: 60 + 280 * Math.sin(0.05) }];

test("inDrawingFrame measures the base line and takes its start as the origin", () => {
  const framed = inDrawingFrame(sheet, camera, photographed(camera, start), photographed(camera, end));
  if (!framed.ok) throw new Error(framed.problem.code);
  expectClose(framed.length, 280, 1e-6);
  const found = rectification(framed.points, camera, [{ x: 0, y: 0 }, { x: 280, y: 0 }, { x: 280, y: 200 }, { x: 0, y: 200 }]);
  if (!found.ok) throw new Error(found.problem.code);
  // 100 along the base line and 70 up from it, by the rotation written out.
  const there = { x: 40 + 100 * Math.cos(0.05) - 70 * Math.sin(0.05), y: 60 + 100 * Math.sin(0.05) + 70 * Math.cos(0.05) };
  const back = paperPoint(found.rectification, photographed(camera, there))!;
  expectClose(back.x, 100, 1e-6);
  expectClose(back.y, 70, 1e-6);
});

test("inDrawingFrame refuses a base line without length, and what rectification refuses", () => {
  const once = photographed(camera, start);
  expect(inDrawingFrame(sheet, camera, once, once)).toEqual({ ok: false, problem: { code: "base-too-short", field: "base", min: 10 } });
  expect(inDrawingFrame(sheet.slice(1), camera, once, once)).toMatchObject({ ok: false, problem: { code: "points-too-few" } });
});
