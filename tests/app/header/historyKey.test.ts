// @vitest-environment jsdom
import { expect, test } from "vitest";
import { historyKey } from "../../../src/app/header/historyKey";

const pressed = (key: string, held: Partial<Parameters<typeof historyKey>[0]>) => historyKey({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, target: null, ...held });

test.each([
  ["z", { ctrlKey: true }, "undo"],
  ["z", { metaKey: true }, "undo"],
  ["Z", { ctrlKey: true, shiftKey: true }, "redo"],
  ["Z", { metaKey: true, shiftKey: true }, "redo"],
  ["y", { ctrlKey: true }, "redo"],
  ["z", {}, null],
  ["z", { ctrlKey: true, altKey: true }, null],
  ["x", { ctrlKey: true }, null],
] as const)("%s with %o asks for %s", (key, held, asked) => {
  expect(pressed(key, held)).toBe(asked);
});

test("while text that is not in the job stands in a field the keys are the browser's", () => {
  const field = document.createElement("input");
  expect(pressed("z", { ctrlKey: true, target: field })).toBe("undo");
  field.dataset.typed = "true";
  expect(pressed("z", { ctrlKey: true, target: field })).toBeNull();
});
