import { expect, test } from "vitest";
import { plainText } from "../../../src/output/dxf/plainText";

test.each([
  ["⌀96", "%%c96"], ["35°", "35%%d"], ["±0.5", "%%p0.5"], ["3 × 6 = 18", "3 x 6 = 18"], ["4 1/2″", "4 1/2\""], ["Tür, Größe", "Tur, Grosse"], ["管", "\\U+7BA1"],
])("plainText of “%s” is %s", (text, plain) => {
  expect(plainText(text)).toBe(plain);
});
