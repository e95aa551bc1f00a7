// @vitest-environment jsdom
import { expect, test } from "vitest";
import { drawnStation, moved } from "../../../src/app/teach/teaching";

const parts = (count: number) => ({ parts: Array.from({ length: count }, (_, station) => ({ station, text: "", items: [], construction: [] })) });
const steps = [parts(0), parts(3), parts(0)];

test("moved goes from step to step, and keeps the station in hand", () => {
  expect(moved({ index: 0, station: 2 }, 1, steps, false)).toEqual({ index: 1, station: 2 });
  expect(moved({ index: 2, station: null }, -1, steps, false)).toEqual({ index: 1, station: null });
});

test("moved goes through the stations of a step one at a time, on and back, and then puts the station down", () => {
  const on = [{ index: 0, station: null }, { index: 1, station: 0 }, { index: 1, station: 1 }, { index: 1, station: 2 }, { index: 2, station: null }];
  on.slice(1).forEach((place, i) => expect(moved(on[i]!, 1, steps, true)).toEqual(place));
  on.slice(0, -1).forEach((place, i) => expect(moved(on[i + 1]!, -1, steps, true)).toEqual(place));
});

test("moved past either end is nowhere", () => {
  expect(moved({ index: 0, station: null }, -1, steps, true)).toBeNull();
  expect(moved({ index: 2, station: null }, 1, steps, true)).toBeNull();
});

test("drawnStation is the station in hand, the first without one, the last for the closing station, none where all is drawn at once", () => {
  expect(drawnStation(steps, { index: 1, station: 1 }, true)).toBe(1);
  expect(drawnStation(steps, { index: 1, station: null }, true)).toBe(0);
  expect(drawnStation(steps, { index: 1, station: 3 }, true)).toBe(2);
  expect(drawnStation(steps, { index: 1, station: 1 }, false)).toBeNull();
  expect(drawnStation(steps, { index: 0, station: 1 }, true)).toBeNull();
});
