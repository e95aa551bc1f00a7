import { inv, lusolve, matrix, multiply, transpose } from "mathjs";
import { expect, test } from "vitest";
import { leastSquares, standardError } from "../../../src/core/numeric/leastSquares";
import { expectAllClose, expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";


test("leastSquares gives the normal equations' solution, as a general mathematics library solves them", () => {
  const random = randomSource(11);
  for (let n = 0; n < 40; n++) {
    const [height, width] = [random.whole(4, 12), random.whole(1, 4)];
    const rows = Array.from({ length: height }, () => Array.from({ length: width }, () => random.between(-3, 3)));
    const right = rows.map(() => random.between(-3, 3));
    const a = matrix(rows);
    const square = multiply(transpose(a), a);
    const expected = (lusolve(square, multiply(transpose(a), right)).toArray() as number[][]).flat();
    const solved = leastSquares(rows, right)!;
    expectAllClose(solved.values, expected, 1e-9);
    const weights = Array.from({ length: width }, () => random.between(-1, 1));
    const spread = multiply(multiply(weights, inv(square)), weights) as unknown as number;
    expectClose(standardError(solved, weights), Math.sqrt(spread), 1e-9);
  }
});

test("leastSquares knows no solution where a column depends on others, or where there are too few rows", () => {
  expect(leastSquares([[1, 2, 3], [2, 1, 3], [5, 5, 10], [0, 1, 1]], [1, 2, 3, 4])).toBeNull();
  expect(leastSquares([[0, 1], [0, 2], [0, 3]], [1, 2, 3])).toBeNull();
  expect(leastSquares([[1, 2, 3]], [1])).toBeNull();
});

test("leastSquares refuses what is no system of equations", () => {
  expect(() => leastSquares([[1, 2], [3]], [1, 2])).toThrow(RangeError);
  expect(() => leastSquares([[1], [2]], [1])).toThrow(RangeError);
  expect(() => leastSquares([[NaN], [2]], [1, 2])).toThrow(RangeError);
});

test("the standard error of the mean of n numbers is 1 / √n (elementary)", () => {
  expectClose(standardError(leastSquares(Array.from({ length: 9 }, () => [1]), [1, 2, 3, 4, 5, 6, 7, 8, 9])!, [1]), 1 / 3, 1e-12);
});
