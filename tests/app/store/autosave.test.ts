// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { writeJobText } from "../../../src/core/index";
import { createAutosave } from "../../../src/app/store/autosave";
import { slots } from "../../../src/app/store/slots";
import { pipeWith, slant } from "../pipe";

const job = pipeWith([slant]);
const titled = (title: string) => ({ ...job, title });
const titles = () => slots().map(({ text }) => (JSON.parse(text) as { title: string }).title);
const page = () => createAutosave({ kept: vi.fn<(whether: boolean) => void>(), left: vi.fn<() => void>() });
const begunWith = (one: ReturnType<typeof page>) => {
  const kept = one.first();
  return kept.kind === "job" ? kept.development.job : kept.kind;
};

beforeEach(() => {
  localStorage.clear();
  sessionStorage.clear();
  vi.useFakeTimers();
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

test("first is none where nothing is kept", () => {
  expect(begunWith(page())).toBe("none");
});

test("first gives back what another page kept", () => {
  page().keep(job);
  sessionStorage.clear();
  expect(begunWith(page())).toEqual(job);
});

test("first gives back what a single slot of an earlier version holds", () => {
  localStorage.setItem("flatwright.job", writeJobText(job));
  expect(begunWith(page())).toEqual(job);
});

test("first prefers the tab's own work to work saved later by another tab", () => {
  page().keep(titled("mine"));
  const mine = sessionStorage.getItem("flatwright.slot") ?? "";
  vi.advanceTimersByTime(1000);
  page().keep(titled("theirs"));
  sessionStorage.setItem("flatwright.slot", mine);
  expect(begunWith(page())).toEqual(titled("mine"));
});

test("first puts what cannot be read aside, word for word", () => {
  const half = writeJobText(job).slice(0, 200);
  localStorage.setItem("flatwright.job.a", `5\n${half}`);
  expect(begunWith(page())).toBe("unreadable");
  expect(localStorage.getItem("flatwright.job.a.unreadable")).toBe(`5\n${half}`);
  expect(localStorage.getItem("flatwright.job.a")).toBeNull();
});

test("storage that is refused altogether is said", () => {
  vi.spyOn(Storage.prototype, "getItem").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  expect(begunWith(page())).toBe("no-storage");
});

test("keep writes the first change at once, and the last of many within 0.3 s", () => {
  const one = page();
  for (const title of ["a", "b", "c"]) one.keep(titled(title));
  expect(titles()).toEqual(["a"]);
  vi.advanceTimersByTime(300);
  expect(titles()).toEqual(["c"]);
});

test("flush writes what waits", () => {
  const one = page();
  for (const title of ["a", "b"]) one.keep(titled(title));
  one.flush();
  expect(titles()).toEqual(["b"]);
});

test("two pages that began with the same work do not write over one another", () => {
  page().keep(job);
  const [a, b] = [page(), page()];
  for (const one of [a, b]) one.first();
  a.keep(titled("a"));
  b.keep(titled("b"));
  expect(titles()).toEqual(expect.arrayContaining(["a", "b", job.title]));
});

test("keepInstead leaves a work that was worked on in its slot", () => {
  const one = page();
  one.keep(titled("worked on"));
  one.keepInstead(titled("another"));
  expect(titles().sort()).toEqual(["another", "worked on"]);
});

test("keepInstead leaves the work the page began with where it is", () => {
  page().keep(titled("before"));
  const one = page();
  one.first();
  one.keepInstead(titled("another"));
  expect(titles().sort()).toEqual(["another", "before"]);
});

test("keepInstead writes over a job that was only looked at", () => {
  const one = page();
  for (const title of ["looked at", "another"]) one.keepInstead(titled(title));
  expect(titles()).toEqual(["another"]);
});

test("forget begins anew and keeps the text aside", () => {
  const one = page();
  one.keep(job);
  const key = one.slot.key();
  expect(one.forget()).toBe(true);
  expect(begunWith(page())).toBe("none");
  expect(localStorage.getItem(`${key}.unreadable`)).toContain(writeJobText(job));
});

test("full storage is told, and so is storage that takes things again", () => {
  const kept = vi.fn<(whether: boolean) => void>();
  const one = createAutosave({ kept, left: () => undefined });
  const full = vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  one.keep(job);
  vi.advanceTimersByTime(1000);
  full.mockRestore();
  one.keep(job);
  expect(kept.mock.calls).toEqual([[false], [true]]);
});
