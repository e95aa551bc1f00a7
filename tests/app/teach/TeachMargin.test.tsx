// @vitest-environment jsdom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { replaceJob } from "../../../src/app/store/changes";
import { hold, useApp } from "../../../src/app/store/store";
import { packJob } from "../../../src/app/teach/packedJob";
import { TeachDrawing } from "../../../src/app/teach/TeachDrawing";
import { TeachMargin } from "../../../src/app/teach/TeachMargin";
import { useTeaching } from "../../../src/app/teach/teaching";
import { formatOf } from "../../../src/app/quantity/format";
import { useSettings } from "../../../src/app/store/settings";
import { hole, pipeWith, slant } from "../pipe";

beforeEach(() => {
  replaceJob(pipeWith([slant, hole]));
  hold(null);
  useTeaching.setState({ step: "data", each: false, way: "screen", playing: false, speed: "usual" });
  window.history.replaceState(null, "", "#teach");
});

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

async function show() {
  const { development } = useApp.getState();
  const format = formatOf("mm", useSettings.getState());
  render(
    <>
      <svg>
        <TeachDrawing board={board(development, { width: 320, height: 200 })} development={development} format={format} />
      </svg>
      <TeachMargin />
    </>,
  );
  // The address is opened.
  await act(async () => {});
}

// By selector: roles are looked up anew in all of the drawing each time, which takes long.
const found = <E extends HTMLElement>(selector: string, text: string) => {
  const one = [...document.querySelectorAll<E>(selector)].find((element) => element.textContent?.includes(text));
  if (!one) throw new Error(`no ${selector} "${text}"`);
  return one;
};
const button = (name: string) => found<HTMLButtonElement>("button", name);
const heading = () => document.querySelector("h2")?.textContent;

test("the lesson begins with the exercise in words, and goes on and back", async () => {
  await show();
  expect(screen.getByText(/The exercise: A pipe, ⌀ 90 .* cut at 35° from square/)).toBeDefined();
  expect(button("Back").getAttribute("aria-disabled")).toBe("true");
  fireEvent.click(button("Next"));
  expect(heading()).toBe("Draw the views");
  fireEvent.click(button("Back"));
  expect(heading()).toBe("Read the data, choose the projection");
});

test("each step adds to the drawing and keeps what stood", async () => {
  await show();
  const paths = () => [...document.querySelectorAll("svg path, svg circle, svg text")].map((one) => one.outerHTML);
  let before = paths();
  for (let i = 0; i < 11; i++) {
    fireEvent.click(button("Next"));
    const now = paths();
    expect(now.length).toBeGreaterThan(before.length);
    expect(before.filter((one) => !now.includes(one))).toEqual([]);
    before = now;
  }
  expect(button("Next").getAttribute("aria-disabled")).toBe("true");
});

test("a step of the list is jumped to, and the address names it", async () => {
  await show();
  fireEvent.click(button("Carry each ordinate"));
  expect(button("Carry each ordinate").getAttribute("aria-current")).toBe("step");
  expect(window.location.hash).toBe("#teach/carry");
});

test("one station at a time takes each in hand and says its ordinate", async () => {
  await show();
  fireEvent.click(button("Carry each ordinate"));
  fireEvent.click(screen.getByLabelText("One station at a time"));
  expect(screen.getByText("Station 0: ordinate 156.98.")).toBeDefined();
  fireEvent.keyDown(screen.getByLabelText("One station at a time"), { key: "PageDown" });
  expect(useApp.getState().held).toBe(1);
  expect(screen.getByText("Station 1: ordinate 159.38.")).toBeDefined();
  expect(window.location.hash).toBe("#teach/carry?station=1");
});

test("an address opens its step, its station and its way", async () => {
  window.history.replaceState(null, "", "#teach/carry?station=5&way=hand");
  await show();
  expect(heading()).toBe("Carry each ordinate");
  expect(useApp.getState().held).toBe(5);
  expect(screen.getByText(/^Station 5: ordinate 200.55/)).toBeDefined();
  expect(screen.getByLabelText<HTMLSelectElement>("Drawn").value).toBe("hand");
});

test("an address with a step or station that does not exist opens the first step", async () => {
  window.history.replaceState(null, "", "#teach/opening-nowhere?station=99");
  await show();
  expect(heading()).toBe("Read the data, choose the projection");
  expect(useApp.getState().held).toBeNull();
});

test("a link carries the job, which comes on the board with its step", async () => {
  const job = pipeWith([Object.assign({}, slant, { angle: 30 })]);
  window.history.replaceState(null, "", `#teach/carry?station=8&job=${await packJob(job)}`);
  await show();
  await vi.waitFor(() => expect(useApp.getState().held).toBe(8));
  expect(useApp.getState().development.job.part.cuts[0]).toMatchObject({ angle: 30 });
  expect(useApp.getState().message).toMatchObject({ kind: "set-aside" });
});

test("a link whose job cannot be read says so and leaves the job on the board", async () => {
  window.history.replaceState(null, "", "#teach/carry?job=AAAA");
  await show();
  await vi.waitFor(() => expect(useApp.getState().message).toMatchObject({ kind: "file", fault: { problem: { code: "not-a-job" } } }));
  expect(useApp.getState().development.job.part.cuts).toHaveLength(2);
});

test("it plays by itself, faster when asked, and stops when led by hand", async () => {
  await show();
  vi.useFakeTimers();
  fireEvent.click(button("Play"));
  act(() => void vi.advanceTimersByTime(7000));
  expect(heading()).toBe("Draw the views");
  act(() => useTeaching.setState({ speed: "quick" }));
  act(() => void vi.advanceTimersByTime(3500));
  expect(heading()).toBe("Divide the circle and number");
  fireEvent.click(button("Back"));
  act(() => void vi.advanceTimersByTime(20000));
  expect(heading()).toBe("Draw the views");
});

test("playing stops at the end", async () => {
  await show();
  act(() => useTeaching.setState({ step: "dimensions", playing: true }));
  vi.useFakeTimers();
  act(() => useTeaching.setState({ speed: "quick" }));
  act(() => void vi.advanceTimersByTime(20000));
  expect(useTeaching.getState().playing).toBe(false);
});
