import { expect, test } from "vitest";
import { createHistory } from "../../../src/app/store/history";
import { pipeWith, slant } from "../pipe";

const first = pipeWith([slant]);
const titled = (title: string) => ({ ...first, title });
const step = (title: string) => ({ job: titled(title), what: title, field: null });

function historyOf(...titles: string[]) {
  const history = createHistory(first);
  for (const title of titles) history.record(step(title), null);
  return history;
}

test("undo back to the start gives the very first job", () => {
  const history = historyOf("a", "b", "c");
  history.undo();
  history.undo();
  expect(history.undo()?.job).toBe(first);
  expect(history.undo()).toBeNull();
});

test("redo makes again what undo took back", () => {
  const history = historyOf("a", "b");
  history.undo();
  expect(history.redo()).toMatchObject({ job: titled("b"), step: { what: "b" } });
  expect(history.redo()).toBeNull();
});

test("next says in words what both would do", () => {
  const history = historyOf("a", "b");
  expect(history.next()).toEqual({ undo: "b", redo: null });
  history.undo();
  expect(history.next()).toEqual({ undo: "a", redo: "b" });
});

test("a new step after undo leaves nothing to make again", () => {
  const history = historyOf("a", "b");
  history.undo();
  history.record(step("c"), null);
  expect(history.next()).toEqual({ undo: "c", redo: null });
});

test("steps of one gesture are one", () => {
  const history = historyOf("before");
  const drag = {};
  for (const title of ["a", "b", "c"]) history.record(step(title), drag);
  expect(history.undo()?.job).toEqual(titled("before"));
  expect(history.redo()?.job).toEqual(titled("c"));
});

test("two gestures are two steps, and a gesture that goes on after undo begins a step", () => {
  const history = historyOf();
  const drag = {};
  history.record(step("a"), drag);
  history.record(step("b"), {});
  history.undo();
  history.undo();
  history.record(step("c"), drag);
  expect(history.undo()?.job).toBe(first);
});

test("a job that says the same as before is no step", () => {
  const history = historyOf("a", "a");
  expect(history.undo()?.job).toBe(first);
});

test("the last 200 steps are kept", () => {
  const history = historyOf(...Array.from({ length: 250 }, (_, i) => String(i)));
  let count = 0;
  while (history.undo()) count++;
  expect(count).toBe(200);
});

test("a gesture given up is as if it had never been, with what could be made again before it", () => {
  const history = historyOf("a", "b");
  history.undo();
  const drag = {};
  history.record(step("dragged"), drag);
  history.record(step("dragged on"), drag);
  expect(history.abandon(drag)?.job).toEqual(titled("a"));
  expect(history.next()).toEqual({ undo: "a", redo: "b" });
  expect(history.redo()?.job).toEqual(titled("b"));
});

test("a gesture that is not the last thing done cannot be given up", () => {
  const history = historyOf("a");
  const drag = {};
  history.record(step("dragged"), drag);
  history.record(step("typed"), null);
  expect(history.abandon(drag)).toBeNull();
  expect(history.next().undo).toBe("typed");
});
