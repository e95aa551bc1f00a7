import { expect, test } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds";
import { codeSide, qrItems } from "../../../src/drawing/lesson/qrItems";
import { randomSource } from "../../support/randomSource";

const box = { left: 10, right: 40, bottom: 20, top: 50 };

/** Whether a point lies inside an odd number of the loops: the even-odd rule by a ray to the right. */
function inked(loops: readonly (readonly { readonly x: number; readonly y: number }[])[], x: number, y: number): boolean {
  let crossings = 0;
  for (const loop of loops) loop.forEach((from, i) => {
    const to = loop[(i + 1) % loop.length] ?? from;
    if (from.y > y !== to.y > y && from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x) > x) crossings++;
  });
  return crossings % 2 === 1;
}

test("every module is inked where it is dark and nowhere else, whatever the pattern, corners that touch included", () => {
  const random = randomSource(7);
  for (const count of [1, 2, 5, 21]) {
    const modules = Array.from({ length: count }, () => Array.from({ length: count }, () => random.chance(0.5)));
    const [item] = qrItems(modules, box);
    const size = 30 / (count + 8);
    for (let row = -4; row < count + 4; row++) for (let column = -4; column < count + 4; column++) {
      const x = 10 + (column + 4.5) * size, y = 50 - (row + 4.5) * size;
      expect(inked(item?.loops ?? [], x, y)).toBe(modules[row]?.[column] ?? false);
    }
  }
});

test("four light modules are kept all round, in the middle of a box that is no square", () => {
  const [item] = qrItems([[true]], { left: 0, right: 90, bottom: 0, top: 27 });
  const xs = item?.loops.flat().map(({ x }) => x) ?? [], ys = item?.loops.flat().map(({ y }) => y) ?? [];
  expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([43.5, 46.5, 12, 15]);
  expect(item?.loops).toHaveLength(1);
});

test("no modules are no items", () => {
  expect(qrItems([], box)).toEqual([]);
});

test("a code takes so much paper that its modules are half a millimetre and more, quiet zone and all", () => {
  for (const count of [21, 49, 81]) {
    const modules = Array.from({ length: count }, () => Array.from({ length: count }, () => true));
    const side = codeSide(modules);
    const { left, right } = boundsOf(qrItems(modules, { left: 0, right: side, bottom: 0, top: side }));
    expect((right - left) / count).toBeGreaterThanOrEqual(0.5 - 1e-9);
    expect(left).toBeGreaterThanOrEqual(4 * 0.5 - 1e-9);
  }
});
