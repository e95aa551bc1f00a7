// @vitest-environment jsdom
import { afterEach, expect, test, vi } from "vitest";
import { unseenBoard } from "../../../src/app/handles/unseenBoard";
import { useApp } from "../../../src/app/store/store";
import { handles } from "../../../src/drawing/handles/handles";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";
import { shownOf } from "./shownOf";

afterEach(() => vi.restoreAllMocks());

const job = pipeJob({ diameter: 50, length: 200, cuts: [planeCut({ height: 150, angle: 20 }), openingCut({ shape: "round", diameter: 20 }, { height: 60 })] });

test("every handle is dragged and drawn, and nothing of it is seen or kept", () => {
  const made = vi.spyOn(document, "createElementNS");
  const before = { app: useApp.getState(), page: document.documentElement.outerHTML };
  const shown = shownOf(job);
  const unseen = unseenBoard(shown);
  const paper = made.mock.results[0]?.value as SVGSVGElement;
  const drawings = new Set<string>();
  const count = handles(shown.drawn, shown.development).length;
  expect(count).toBeGreaterThan(4);
  for (let turn = 0; turn < 2 * count; turn++) {
    unseen.drag(turn);
    drawings.add(paper.innerHTML);
  }
  expect(drawings.size).toBeGreaterThan(count);
  expect(paper.querySelectorAll("path").length).toBeGreaterThan(20);
  expect({ app: useApp.getState(), page: document.documentElement.outerHTML }).toEqual(before);
});

test("the paper is empty once it is cleared", async () => {
  const made = vi.spyOn(document, "createElementNS");
  const unseen = unseenBoard(shownOf(job));
  const paper = made.mock.results[0]?.value as SVGSVGElement;
  unseen.drag(0);
  expect(paper.childElementCount).toBeGreaterThan(0);
  unseen.clear();
  await vi.waitFor(() => expect(paper.childElementCount).toBe(0));
});
