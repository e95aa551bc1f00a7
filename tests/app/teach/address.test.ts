import { expect, test } from "vitest";
import { readAddress, writeAddress } from "../../../src/app/teach/address";

test("writeAddress and readAddress are the reverse of one another", () => {
  for (const one of [
    { step: "data", station: null, way: "screen", job: null }, { step: "carry", station: "3a", way: "screen", job: null },
    { step: "opening-air-slots-2", station: "0", way: "hand", job: "a-_9" },
  ] as const) expect(readAddress(writeAddress(one))).toEqual(one);
});

test("writeAddress leaves out what goes without saying", () => {
  expect(writeAddress({ step: "carry", station: null, way: "screen", job: null })).toBe("#teach/carry");
  expect(writeAddress({ step: "carry", station: "5", way: "hand", job: null })).toBe("#teach/carry?station=5&way=hand");
});

test("readAddress finds no step in another address", () => {
  for (const hash of ["", "#teach", "#develop", "#description", "#teach/", "#teach/<b>", "#teach/carry/5"]) expect(readAddress(hash)).toBeNull();
});
