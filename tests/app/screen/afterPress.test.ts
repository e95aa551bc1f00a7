// @vitest-environment jsdom
import { expect, test } from "vitest";
import { afterPress } from "../../../src/app/screen/afterPress";

const told = (type: string) => document.body.dispatchEvent(new Event(type, { bubbles: true }));

const soon = () => new Promise((resolve) => setTimeout(resolve, 5));

test("without a press it acts at once", () => {
  const events: string[] = [];
  afterPress(() => events.push("act"));
  expect(events).toEqual(["act"]);
});

test.each(["pointerup", "pointercancel"])("during a press it acts after %s, and after the click that follows at once", async (end) => {
  const events: string[] = [];
  told("pointerdown");
  afterPress(() => events.push("first"));
  afterPress(() => events.push("second"));
  await soon();
  expect(events).toEqual([]);
  told(end);
  events.push("click");
  await soon();
  expect(events).toEqual(["click", "first", "second"]);
  afterPress(() => events.push("at once"));
  told("pointerdown");
  told(end);
  await soon();
  expect(events).toEqual(["click", "first", "second", "at once"]);
});
