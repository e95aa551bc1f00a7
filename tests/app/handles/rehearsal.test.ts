// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { useInMotion } from "../../../src/app/board/inMotion";
import type { Shown } from "../../../src/app/board/camera";
import { rehearse } from "../../../src/app/handles/rehearsal";
import type { Job } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

let asked: (() => void)[] = [];

beforeEach(() => {
  asked = [];
  vi.spyOn(window, "setTimeout").mockImplementation((run) => asked.push(run) as never);
  vi.spyOn(window, "clearTimeout").mockImplementation((number) => void asked.splice(Number(number) - 1, 1));
});
afterEach(() => vi.restoreAllMocks());

function shownOf(job: Job): Shown {
  const development = developed(job);
  const options = { width: 300, height: 200 };
  const drawn = board(development, options);
  return { development, fit: drawn, drawn, whole: drawn.bounds, view: drawn.bounds, size: options, px: 3, options };
}

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

test("nothing is rehearsed while a hand drags, nor after it was left off", () => {
  const shown = shownOf(pipeJob({ diameter: 50, length: 200, attitude: "lying", cuts: [planeCut({ height: 100 })] }));
  useInMotion.setState({ by: "handle" });
  rehearse(shown);
  expect(idled()).toBe(0);
  useInMotion.setState({ by: null });
  rehearse(shown)();
  expect(idled()).toBe(0);
});
