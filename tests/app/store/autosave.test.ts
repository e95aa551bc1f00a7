// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { writeJobText } from "../../../src/core/index";
import { forgetJob, keepJob, keptJob } from "../../../src/app/store/autosave";
import { change, useApp } from "../../../src/app/store/store";
import { pipeWith, slant } from "../pipe";

const job = pipeWith([slant]);

beforeEach(() => localStorage.clear());
afterEach(() => vi.restoreAllMocks());

test("keptJob gives back what keepJob kept", () => {
  expect(keepJob(job)).toBe(true);
  const kept = keptJob();
  expect(kept.kind === "job" && kept.development.job).toEqual(job);
});

test("keptJob puts what cannot be read aside instead of throwing it away", () => {
  localStorage.setItem("flatwright.job", writeJobText(job).slice(0, 200));
  expect(keptJob().kind).toBe("unreadable");
  expect(localStorage.getItem("flatwright.job.unreadable")).toBe(writeJobText(job).slice(0, 200));
});

test("forgetJob begins anew and keeps the text aside", () => {
  keepJob(job);
  forgetJob();
  expect(keptJob().kind).toBe("none");
  expect(localStorage.getItem("flatwright.job.unreadable")).toBe(writeJobText(job));
});

test("full storage is said, and the change is made all the same", () => {
  vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  change((of) => ({ ...of, title: "Kept nowhere" }));
  expect(useApp.getState().message).toEqual({ kind: "no-storage" });
  expect(useApp.getState().development.job.title).toBe("Kept nowhere");
});

test("storage that is refused altogether is said", () => {
  vi.spyOn(Storage.prototype, "getItem").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  expect(keptJob().kind).toBe("no-storage");
});
