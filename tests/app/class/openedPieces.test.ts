// @vitest-environment jsdom
import { beforeEach, expect, test, vi } from "vitest";
import { exerciseOf, variants, type Job } from "../../../src/core/index";
import { pipeWith, slant } from "../pipe";

const exercise: Job = { ...pipeWith([slant]), exercise: { ...pipeWith([]).exercise, ranges: [{ field: "part.diameter", from: 70, to: 110, step: 1 }] } };

/** The page as it is when it has just been loaded. */
async function loaded() {
  vi.resetModules();
  const { openCode, leavePiece } = await import("../../../src/app/class/openVariant");
  const { openedFrom } = await import("../../../src/app/class/openedPieces");
  const { replaceJob } = await import("../../../src/app/store/changes");
  const { useApp } = await import("../../../src/app/store/store");
  return { openCode, leavePiece, openedFrom, replaceJob, onBoard: () => useApp.getState().development.job };
}

beforeEach(() => localStorage.clear());

test("the exercise of a piece is known after the page was loaded again, and after readings were put into the piece", async () => {
  const made = variants(exerciseOf(exercise), 2);
  const [first, second] = made.ok ? made.variants.map(({ code }) => code) : [];
  const before = await loaded();
  before.replaceJob(exercise);
  await before.openCode(first!);
  const piece = before.onBoard();
  const again = await loaded();
  again.replaceJob({ ...piece, marking: { ...piece.marking, tolerance: 2 } });
  expect(await again.openCode(second!)).toBeNull();
  expect(again.onBoard().title).toBe(`Vent, ${second}`);
  await again.leavePiece();
  expect(again.onBoard()).toEqual(exercise);
});

test("what is kept of opened pieces and is none of them is passed over", async () => {
  for (const text of ["{", "[1, null, {\"title\": \"Vent\", \"exercise\": \"{}\"}]", "{\"title\": 3}"]) {
    localStorage.setItem("flatwright.opened", text);
    const { openedFrom } = await loaded();
    expect(openedFrom(exercise)).toBeNull();
  }
});
