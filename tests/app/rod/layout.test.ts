import { expect, test } from "vitest";
import { nearestTick, rodLayout } from "../../../src/app/rod/layout";
import { developed, pipeWith, slant } from "../pipe";

function piece(stations: number) {
  const job = pipeWith([slant]);
  const [first] = developed({ ...job, development: { ...job.development, stations } }).pieces;
  if (!first) throw new Error("no piece");
  return first;
}

test("rodLayout stands even stations exactly over their columns when these fit", () => {
  const layout = rodLayout(piece(16), 1440, 7);
  expect(layout.fits).toBe(true);
  layout.ticks.forEach((x, i) => expect(x).toBeCloseTo(layout.left + (i + 0.5) * layout.column, 6));
});

test("rodLayout keeps the rod within the width however many stations there are, and thins the numbers", () => {
  const layout = rodLayout(piece(360), 390, 7);
  expect(layout.fits).toBe(false);
  expect(Math.min(...layout.ticks)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...layout.ticks)).toBeLessThanOrEqual(390);
  const numbered = layout.ticks.filter((_, i) => layout.numbered[i]);
  numbered.slice(1).forEach((x, i) => expect(x - (numbered[i] ?? 0)).toBeGreaterThan(20));
  expect(layout.numbered.at(-1)).toBe(true);
});

test("nearestTick is the station closest to the pointer", () => {
  expect(nearestTick([0, 10, 20], 14)).toBe(1);
  expect(nearestTick([0, 10, 20], 500)).toBe(2);
});
