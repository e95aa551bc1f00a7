import { expect, test } from "vitest";
import { cutFileName } from "../../../src/app/files/cutFileName";

const size = { width: 282.6, height: 220 };

test.each([
  ["Lean-to vent", "pipe", "Lean-to vent, pipe, 283x220.dxf"],
  ["Rohr ⌀ 90 für Süd/Größe", "Rohr", "Rohr dia 90 fur Sud-Grosse, Rohr, 283x220.dxf"],
  ["煙突", "pipe", "pipe, 283x220.dxf"],
  ["", "pipe top plate", "pipe top plate, 283x220.dxf"],
  ["../../etc", "pipe", "etc, pipe, 283x220.dxf"],
])("cutFileName of “%s”, %s is %s", (title, piece, name) => {
  expect(cutFileName({ title, piece, size, extension: "dxf" })).toBe(name);
});

test("cutFileName of a file with several parts names no size", () => {
  expect(cutFileName({ title: "Vent", piece: "parts", size: null, extension: "svg" })).toBe("Vent, parts.svg");
});
