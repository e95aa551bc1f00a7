import { expect, test } from "vitest";
import { pasted } from "../../../src/app/check/pasted";

const grid = [["a"], ["b", "b2"], ["c", "c2"]];

test("a column goes into the fields from the one it was pasted in", () => {
  expect(pasted("1\r\n2\r\n3\r\n", grid, "a")).toEqual({ texts: { a: "1", b: "2", c: "3" }, surplus: [] });
});

test("a block goes across and down, and an empty cell leaves its field", () => {
  expect(pasted("1,5\t2\n\t4", grid, "b")).toEqual({ texts: { b: "1,5", b2: "2", c2: "4" }, surplus: [] });
});

test("cells without a field are given back, none is lost", () => {
  expect(pasted("1\n2\n3\n4", grid, "b")).toEqual({ texts: { b: "1", c: "2" }, surplus: ["3", "4"] });
});

test("a single cell, and a field of no table, are pasted as usual", () => {
  expect(pasted("12.5\n", grid, "a")).toBeNull();
  expect(pasted("1\n2", grid, "elsewhere")).toBeNull();
});
