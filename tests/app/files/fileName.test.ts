import { expect, test } from "vitest";
import { fileName } from "../../../src/app/files/fileName";

test.each([
  ["Vent through the roof", "Vent through the roof.json"],
  ["a/b\\c:d*e?f", "a-b-c-d-e-f.json"],
  ["", "Untitled pipe.json"],
  ["...", "Untitled pipe.json"],
  ["<script>alert(1)</script>", "script-alert(1)--script.json"],
  ["Rohr ⌀ 90 für Süd", "Rohr ⌀ 90 für Süd.json"],
  ["con", "con-.json"],
  ["x".repeat(300), `${"x".repeat(80)}.json`],
])("fileName of “%s” is %s", (title, name) => {
  expect(fileName(title, "json")).toBe(name);
});
