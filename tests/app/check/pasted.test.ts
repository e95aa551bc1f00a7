import { describe, expect, test } from "vitest";
import type { GridRow } from "../../../src/app/check/namedRows";
import { asLikely, pasted, type PasteWish } from "../../../src/app/check/pasted";

const sizes: GridRow[] = [{ keys: ["stretchOut"], names: ["stretch-out"] }, { keys: ["spacing"], names: ["one space"] }];
const names = (count: number) => [...Array.from({ length: count }, (_, k) => [String(k)]), ["0", "0 again", String(count)]];
const ends = names(6).map((one, at): GridRow => ({ keys: [`top ${at}`], names: one }));
const both = names(6).map((one, at): GridRow => ({ keys: [`bottom ${at}`, `top ${at}`], names: one }));

const laid = (text: string, from = "top 0", wish: Partial<PasteWish> = {}, table = [sizes, ends]) => pasted(text, table, from, { ...asLikely, ...wish })!;
const texts = (text: string, from = "top 0", wish: Partial<PasteWish> = {}, table = [sizes, ends]) => laid(text, from, wish, table).texts;
const tops = (values: readonly string[], first = 0) => Object.fromEntries(values.map((value, i) => [`top ${first + i}`, value]));
const seven = ["157", "159", "164", "170", "164", "159", "157"];
const numbered = (sign: string, from = 0, values = seven) => values.map((value, i) => `${from + i}${sign}${value}`).join("\n");

describe("a column of ordinates alone", () => {
  test("goes into the fields from the one it was pasted in", () => {
    expect(laid("1\r\n2\r\n3\r\n", "stretchOut")).toEqual({ texts: { stretchOut: "1", spacing: "2", "top 0": "3" }, surplus: [], heading: [], leftOut: [], named: null, mark: null });
  });

  test("leaves the field of a blank cell, also of one in a block", () => {
    expect(texts("157\n\n164", "top 2")).toEqual({ "top 2": "157", "top 4": "164" });
    expect(texts("1,5\t2\n\t4", "bottom 0", {}, [sizes, both])).toEqual({ "bottom 0": "1,5", "top 0": "2", "top 1": "4" });
  });

  test("without fields enough gives the rest back, none is lost", () => {
    expect(laid("1\n2\n3\n4", "top 5")).toMatchObject({ texts: { "top 5": "1", "top 6": "2" }, surplus: ["3", "4"] });
  });

  test("keeps its decimal commas, and texts that are no numbers", () => {
    expect(texts("157,5\nabout 160\n164,25")).toEqual(tops(["157,5", "about 160", "164,25"]));
  });

  test("of whole numbers in order is one of readings", () => {
    expect(laid("1\n2\n3\n4\n5")).toMatchObject({ texts: tops(["1", "2", "3", "4", "5"]), named: null });
    expect(laid("3\t150\n5\t152\n8\t154", "bottom 0", {}, [sizes, both])).toMatchObject({ texts: { "bottom 0": "3", "top 0": "150", "bottom 2": "8", "top 2": "154" }, named: null });
  });
});

test("a single cell, and a field of no table, are pasted as usual", () => {
  expect(pasted("12.5\n", [ends], "top 0")).toBeNull();
  expect(pasted("1\n2", [ends], "elsewhere")).toBeNull();
});

describe("a leading column of stations", () => {
  test.each([["tabs", "\t"], ["semicolons", ";"], ["bars", "|"], ["commas", ","], ["commas and a space", ", "], ["spaces", " "], ["many spaces", "    "]])("parted by %s is not taken for readings", (_, sign) => {
    expect(laid(numbered(sign))).toMatchObject({ texts: tops(seven), surplus: [], named: { by: "name", first: "0", last: "6" } });
  });

  test("keeps decimal commas and points beside it", () => {
    expect(texts(numbered(";", 0, ["157,5", "159,25", "164"]))).toEqual(tops(["157,5", "159,25", "164"]));
    expect(texts(numbered(",", 0, ["157.5", "159.25", "164.0"]))).toEqual(tops(["157.5", "159.25", "164.0"]));
    expect(texts("0;\"157,5\"\n1;\"159\"")).toEqual(tops(["157,5", "159"]));
  });

  test("sends each reading to its own, wherever it was pasted, the first line again at the end", () => {
    expect(texts("0\t157\n2\t164\n4\t164\n0\t157.5", "top 3")).toEqual({ "top 0": "157", "top 2": "164", "top 4": "164", "top 6": "157.5" });
    expect(texts("4\t164\n5\t159\n\t157")).toEqual({ "top 4": "164", "top 5": "159", "top 6": "157" });
    expect(texts("3\t170\n\n4\t164\n5\t")).toEqual({ "top 3": "170", "top 4": "164" });
  });

  test("is known by names too, with the sizes before it", () => {
    expect(texts("Stretch-out\t282.7\nOne space\t47.1\nStation 0\t157\nStation 1\t159\nStation 0 again\t157", "stretchOut")).toEqual({ stretchOut: "282.7", spacing: "47.1", "top 0": "157", "top 1": "159", "top 6": "157" });
    expect(texts("St. 1\t159\nSt. 2\t164", "top 1")).toEqual(tops(["159", "164"], 1));
    expect(laid("A\t157\nB\t159\nC\t164")).toMatchObject({ texts: tops(["157", "159", "164"]), named: { by: "order", first: "A", last: "C" } });
  });

  test("that numbers what is not there leaves those readings over", () => {
    expect(laid("0\t157\n1\t159\n2\t164\n3\t170\n9\t1")).toMatchObject({ texts: tops(["157", "159", "164", "170"]), surplus: ["1"] });
  });

  test("counted from 1 counts the lines, until it is said to name them", () => {
    expect(laid(numbered("\t", 1))).toMatchObject({ texts: tops(seven), named: { by: "order", either: false } });
    const six = numbered("\t", 1, seven.slice(1));
    expect(laid(six)).toMatchObject({ texts: tops(seven.slice(1)), named: { by: "order", either: true } });
    expect(laid(six, "top 0", { by: "name" })).toMatchObject({ texts: tops(seven.slice(1), 1), named: { by: "name", either: true } });
    expect(laid(six, "top 1")).toMatchObject({ texts: tops(seven.slice(1), 1), named: { by: "name", either: false } });
  });

  test("stands before both ends", () => {
    expect(laid("0\t10\t157\n1\t11\t159\n2\t12\t164", "bottom 0", {}, [sizes, both])).toMatchObject({ texts: { "bottom 0": "10", "top 1": "159", "bottom 2": "12" }, surplus: [], named: { by: "name" } });
  });
});

describe("a heading", () => {
  test("over two columns is left out and said", () => {
    expect(laid(`Station\tOrdinate\n\tmm\n${numbered("\t")}`)).toMatchObject({ texts: tops(seven), heading: ["Station", "Ordinate"], named: { by: "name" } });
    expect(laid(`Station;Höhe\n${numbered(";")}`)).toMatchObject({ texts: tops(seven), surplus: [] });
  });

  test("tells which of many columns is for which field; the others are named", () => {
    expect(laid("Station,Direction,Ordinate\n0,180.00,157.2\n1,240.00,159.9\n2,300.00,164.1")).toMatchObject({ texts: tops(["157.2", "159.9", "164.1"]), surplus: [], leftOut: ["Direction"] });
    expect(laid("Station\tTop\tFoot\n0\t157\t10\n1\t159\t11", "bottom 0", {}, [sizes, both])).toMatchObject({ texts: { "top 0": "157", "bottom 0": "10", "top 1": "159", "bottom 1": "11" } });
  });

  test("over one column is one when it says so or the rest just fills the fields; any other text stays a reading", () => {
    expect(laid(["Ordinate (mm)", "157", "159"].join("\n"))).toMatchObject({ texts: tops(["157", "159"]), heading: ["Ordinate (mm)"] });
    expect(laid(["Höhe", ...seven].join("\n"))).toMatchObject({ texts: tops(seven), heading: ["Höhe"] });
    for (const text of ["see over", "?", "not drawn"]) expect(laid([text, "159", "164"].join("\n"))).toMatchObject({ texts: tops([text, "159", "164"]), heading: [] });
  });
});

describe("commas", () => {
  test("part decimals when nothing tells otherwise, which can be turned round", () => {
    const text = "1,250\n1,275\n1,310";
    expect(laid(text)).toMatchObject({ texts: tops(["1,250", "1,275", "1,310"]), mark: { sign: ",", as: "decimal", example: "1,250", read: 1.25, either: true } });
    expect(laid(text, "top 0", { mark: "thousands" })).toMatchObject({ texts: tops(["1250", "1275", "1310"]), mark: { as: "thousands", read: 1250, either: true } });
    expect(laid(text, "top 0", { mark: "decimal" }).mark?.as).toBe("decimal");
  });

  test("part thousands where the figures beside them say so", () => {
    expect(texts("985\n998\n1,010\n1,025")).toEqual(tops(["985", "998", "1,010", "1,025"].map((text) => text.replace(",", ""))));
    expect(texts("1,250.5\n1,275.0")).toEqual(tops(["1250.5", "1275.0"]));
    expect(texts("157\n157,250\n158,125")).toEqual(tops(["157", "157,250", "158,125"]));
  });

  test("that can be read in one way only are read so, and said", () => {
    expect(laid("157,5\n1,250\n160", "top 0", { mark: "thousands" })).toMatchObject({ texts: tops(["157,5", "1,250", "160"]), mark: { as: "decimal", either: false } });
  });

  test("in fewer than half of the cells are left as they are, unsaid", () => {
    expect(laid("157,5\n160\n164").mark).toBeNull();
  });

  test("points are asked about where commas part decimals", () => {
    expect(laid("1.250\n1.275").mark).toBeNull();
    expect(laid("1.250\n1.275", "top 0", { comma: true })).toMatchObject({ mark: { sign: ".", as: "decimal", either: true } });
    expect(texts("1.250\n1.275,5", "top 0", { comma: true, mark: "thousands" })).toEqual(tops(["1250", "1275,5"]));
  });
});
