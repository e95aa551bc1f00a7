// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createPageSlot } from "../../../src/app/store/pageSlot";
import { slots } from "../../../src/app/store/slots";
import { fakeLocks } from "./fakeLocks";

const texts = () => slots().map(({ text }) => text);

beforeEach(() => {
  localStorage.clear();
  sessionStorage.clear();
  vi.stubGlobal("navigator", { locks: fakeLocks() });
});
afterEach(() => vi.unstubAllGlobals());

/** A page that has come up and begun with what is kept. */
async function opened() {
  const slot = createPageSlot();
  const first = slot.first()?.text;
  return { slot, first, elsewhere: await slot.claim() };
}

test("a page that begins with the work of a closed page carries it on: one slot is left", async () => {
  localStorage.setItem("flatwright.job.closed", "1\nbefore");
  const { slot, first, elsewhere } = await opened();
  expect([first, elsewhere]).toEqual(["before", false]);
  slot.write("after");
  expect(texts()).toEqual(["after"]);
});

test("the slot of a closed page is given up no sooner than its work is written", async () => {
  localStorage.setItem("flatwright.job.closed", "1\nbefore");
  await opened();
  expect(texts()).toEqual(["before"]);
});

test("a page that begins with the work of an open page leaves it alone and is told", async () => {
  const one = await opened();
  one.slot.write("one");
  sessionStorage.clear();
  const other = await opened();
  expect([other.first, other.elsewhere]).toEqual(["one", true]);
  other.slot.write("other");
  expect(texts().sort()).toEqual(["one", "other"]);
});

test("a tab that is copied, with all it remembers, gets a slot of its own", async () => {
  const one = await opened();
  one.slot.write("one");
  const copy = await opened();
  expect(copy.elsewhere).toBe(true);
  copy.slot.write("copy");
  expect(texts().sort()).toEqual(["copy", "one"]);
});

test("where the browser cannot tell, nothing that may be in use is taken away", async () => {
  vi.stubGlobal("navigator", {});
  localStorage.setItem("flatwright.job.closed", "1\nbefore");
  const { slot, elsewhere } = await opened();
  expect(elsewhere).toBe(false);
  slot.write("after");
  expect(texts()).toEqual(["after", "before"]);
});
