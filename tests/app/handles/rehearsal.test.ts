// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { useInMotion } from "../../../src/app/board/inMotion";
import { rehearse } from "../../../src/app/handles/rehearsal";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";
import { shownOf } from "./shownOf";

let asked: (() => void)[] = [];

beforeEach(() => {
  asked = [];
  vi.spyOn(window, "setTimeout").mockImplementation((run) => asked.push(run) as never);
  vi.spyOn(window, "clearTimeout").mockImplementation((number) => void asked.splice(Number(number) - 1, 1));
});
afterEach(() => vi.restoreAllMocks());

/** Lets the page rest (jsdom does not know when it is idle) until nothing more is asked for; how often it did. */
function idled(): number {
  let count = 0;
  for (let run = asked.shift(); run; run = asked.shift()) {
    run();
    count += 1;
  }
  return count;
}

test("each kind of job is rehearsed once, a few times over", () => {
  rehearse(shownOf(pipeJob({ diameter: 50, length: 200, cuts: [planeCut({ height: 100 })] })));
  expect(idled()).toBe(40);
  rehearse(shownOf(pipeJob({ diameter: 50, length: 200, cuts: [planeCut({ height: 90, angle: 20 })] })));
  expect(idled()).toBe(0);
  rehearse(shownOf(pipeJob({ diameter: 50, length: 200, cuts: [openingCut({ shape: "round", diameter: 10 }, { height: 60 })] })));
  expect(idled()).toBe(40);
});

test("nothing is rehearsed after it was left off, nor once a hand has dragged", () => {
  const shown = shownOf(pipeJob({ diameter: 50, length: 200, attitude: "lying", cuts: [planeCut({ height: 100 })] }));
  rehearse(shown)();
  expect(idled()).toBe(0);
  useInMotion.setState({ by: "handle" });
  rehearse(shown);
  expect(idled()).toBe(0);
  useInMotion.setState({ by: null });
  rehearse(shown);
  expect(idled()).toBe(0);
});

test("a long rest serves for as many as it has room for", async () => {
  const asked: IdleRequestCallback[] = [];
  vi.resetModules();
  vi.stubGlobal("requestIdleCallback", (run: IdleRequestCallback) => asked.push(run));
  const { rehearse } = await import("../../../src/app/handles/rehearsal");
  rehearse(shownOf(pipeJob({ diameter: 50, length: 200, cuts: [planeCut({ height: 100 })] })));
  let rests = 0;
  for (let run = asked.shift(); run; run = asked.shift()) {
    let left = 33;
    run({ didTimeout: false, timeRemaining: () => (left -= 3) });
    rests += 1;
  }
  // After six of them, 3 ms each, 15 ms are left; 40 take seven rests.
  expect(rests).toBe(7);
  vi.unstubAllGlobals();
});
