import { expect, test } from "vitest";
import { tracedCrossings } from "../../../../src/core/index";
import { expectAllClose } from "../../../support/approximate";

test("tracedCrossings interpolates between the points of the line, either way it is drawn", () => {
  const sine = Array.from({ length: 400 }, (_, i) => ({ x: i, y: 50 + 20 * Math.sin(i / 60) }));
  const xs = [0.3, 77.7, 200, 398.6];
  for (const points of [sine, [...sine].reverse()]) expectAllClose(tracedCrossings(points, xs) as number[], xs.map((x) => 50 + 20 * Math.sin(x / 60)), 1e-3);
});

test("tracedCrossings is null where the line does not reach, and the mean where it wavers", () => {
  expect(tracedCrossings([{ x: 0, y: 1 }, { x: 10, y: 1 }], [-1, 5, 11])).toEqual([null, 1, null]);
  expect(tracedCrossings([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 2, y: 3 }, { x: 6, y: 3 }], [3])).toEqual([1.5]);
  expect(tracedCrossings([{ x: 3, y: 0 }], [3])).toEqual([null]);
  expect(tracedCrossings([{ x: 3, y: 0 }, { x: 3, y: 9 }], [3])).toEqual([null]);
});
