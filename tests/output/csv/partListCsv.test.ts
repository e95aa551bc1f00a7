import { describe, expect, it } from "vitest";
import { partListCsv } from "../../../src/output/csv/partListCsv";
import { shopPipe } from "../../core/fabricate/pieces";

const { parts } = shopPipe({ quantity: 3, plates: { top: { fit: "mean", gap: 0 }, bottom: null } });
const rows = (text: string, separator: string) => text.trimEnd().split("\r\n").map((line) => line.split(separator));

describe("partListCsv", () => {
  it("has a row a part under its headings, as many fields in each", () => {
    const table = rows(partListCsv(parts, { separator: ",", decimal: ".", places: 2 }), ",");
    expect(table.map((row) => row.length)).toEqual([11, 11, 11]);
    expect(table.map(([name, kind, quantity, material]) => [name, kind, quantity, material]).slice(1)).toEqual([["pipe", "pipe", "3", "steel"], ["pipe top plate", "end plate", "3", "steel"]]);
  });
  it("gives lengths in mm, areas in mm² and masses in kg", () => {
    // π · 100 by 200 of 2 mm steel at 7850 kg/m³: 0.98646 kg; a disc of 100: 0.12331 kg.
    const [, pipe, disc] = rows(partListCsv(parts, { separator: ",", decimal: ".", places: 2 }), ",");
    expect(pipe!.slice(4)).toEqual(["2.00", "314.16", "200.00", "62831.85", "1028.32", "0.9865", "2.9594"]);
    expect(disc!.slice(4)).toEqual(["2.00", "100.00", "100.00", "7853.98", "314.16", "0.1233", "0.3699"]);
  });
  it("leaves thickness and masses empty where no thickness is known", () => {
    const [, pipe] = rows(partListCsv([{ ...parts[0]!, thickness: 0, mass: 0, totalMass: 0 }], { separator: ",", decimal: ".", places: 2 }), ",");
    expect(pipe!.slice(4)).toEqual(["", "314.16", "200.00", "62831.85", "1028.32", "", ""]);
  });
  it("writes decimal commas between semicolons", () => {
    expect(rows(partListCsv(parts, { separator: ";", decimal: ",", places: 1 }), ";")[1]!.slice(5, 7)).toEqual(["314,2", "200,0"]);
  });
  it("quotes names that hold the separator", () => {
    expect(partListCsv([{ ...parts[0]!, name: "duct, short" }], { separator: ",", decimal: ".", places: 0 })).toContain("\r\n\"duct, short\",");
  });
  it("refuses a decimal comma between commas", () => {
    expect(() => partListCsv(parts, { separator: ",", decimal: ",", places: 2 })).toThrow(RangeError);
  });
});
