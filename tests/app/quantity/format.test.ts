import { expect, test } from "vitest";
import { formatOf } from "../../../src/app/quantity/format";

const mm = formatOf("mm", { places: 2, denominator: 0, comma: false });
const sixteenths = formatOf("inch", { places: 2, denominator: 16, comma: false });

test("figure rounds to the settings; field hides nothing that was typed", () => {
  expect(mm.figure(17.671459, "length")).toBe("17.67");
  expect(mm.field(17.671459, "length")).toBe("17.6715");
});

test("figure writes inches as fractions to the denominator", () => {
  expect(sixteenths.figure(34.925, "length")).toBe("1 3/8");
  expect(sixteenths.figure(35, "length")).toBe("1 3/8");
});

test("field writes a fraction only when it is the value itself", () => {
  expect(sixteenths.field(34.925, "length")).toBe("1 3/8");
  expect(sixteenths.field(35, "length")).toBe("1.37795");
});

test("the decimal comma is written when it is the reader's", () => {
  expect(formatOf("mm", { places: 1, denominator: 0, comma: true }).figure(12.34, "length")).toBe("12,3");
});

test("area is in the square of the unit", () => {
  expect(mm.area(100)).toBe("100 mm²");
  expect(formatOf("inch", { places: 2, denominator: 0, comma: false }).area(645.16)).toBe("1 in²");
});
