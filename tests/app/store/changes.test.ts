// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { autosave, change, commit, redo, replaceJob, undo } from "../../../src/app/store/changes";
import { keepDraft, say, useApp } from "../../../src/app/store/store";
import { pipeWith, slant } from "../pipe";

const job = pipeWith([slant]);
const now = () => useApp.getState().development.job;
const entitle = (title: string) => change((of) => ({ ...of, title }), "Title");
const diameter = (value: number, gesture: object | null = null) =>
  commit("diameter", String(value), (of) => ({ ...of, part: { ...of.part, diameter: value } }), "Diameter", gesture);

beforeEach(() => {
  localStorage.clear();
  replaceJob(job, "Open");
  say(null);
});
afterEach(() => {
  vi.restoreAllMocks();
});

test("undo and redo go through changes of every kind and say what they were", () => {
  const start = now();
  diameter(95);
  entitle("Other");
  replaceJob({ ...job, note: "a file" }, "Open: a.json");
  expect([undo(), undo(), undo()]).toEqual(["Open: a.json", "Title", "Diameter"]);
  expect(now()).toEqual(start);
  expect([redo(), redo(), redo()]).toEqual(["Diameter", "Title", "Open: a.json"]);
  expect(now().note).toBe("a file");
});

test("a drag is undone as one", () => {
  const drag = {};
  for (const value of [91, 92, 93]) diameter(value, drag);
  expect(undo()).toBe("Diameter");
  expect(now().part.diameter).toBe(90);
});

test("a refused change is no step", () => {
  const before = useApp.getState().undo;
  diameter(-5);
  expect(useApp.getState().undo).toBe(before);
});

test("undo gives up what is typed in the field it changes, and no other", () => {
  diameter(95);
  for (const key of ["diameter", "length"]) keepDraft(key, { text: "x", fault: { kind: "failed" }, change: null });
  undo();
  expect(Object.keys(useApp.getState().drafts)).toEqual(["length"]);
});

test("what undo brings back is kept", () => {
  entitle("Other");
  undo();
  autosave.flush();
  expect(localStorage.getItem(autosave.slot.key())).toContain(`"title": "${job.title}"`);
});

test("full storage is said once, the changes are made all the same, and the offer stays with the next change", () => {
  vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  entitle("Kept nowhere");
  autosave.flush();
  expect(useApp.getState().message).toEqual({ kind: "no-storage" });
  entitle("Nor this");
  autosave.flush();
  expect(useApp.getState().message).toEqual({ kind: "no-storage" });
  say(null);
  entitle("Nor that");
  autosave.flush();
  expect(useApp.getState().message).toBeNull();
  expect(now().title).toBe("Nor that");
});
