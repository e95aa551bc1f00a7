// @vitest-environment jsdom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { RollUp } from "../../../src/app/rollUp/RollUp";
import { replaceJob } from "../../../src/app/store/changes";
import { hold, point, useApp } from "../../../src/app/store/store";
import { hole, pipeWith, slant } from "../pipe";

// jsdom lays nothing out, watches no sizes, knows no media and captures no pointers.
beforeEach(() => {
  vi.stubGlobal("ResizeObserver", class {
    observe() {}
    disconnect() {}
  });
  vi.spyOn(Element.prototype, "clientWidth", "get").mockReturnValue(300);
  vi.spyOn(Element.prototype, "clientHeight", "get").mockReturnValue(240);
  vi.spyOn(Element.prototype, "getBoundingClientRect").mockReturnValue(new DOMRect(0, 0, 300, 240));
  Element.prototype.setPointerCapture = () => {};
  replaceJob(pipeWith([slant, hole]));
  act(() => hold(null));
});

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  vi.useRealTimers();
});

/** What the browser says of motion; it is asked for its answer once. */
const motion = { matches: false, addEventListener: () => undefined, removeEventListener: () => undefined };

function show({ still = false } = {}) {
  motion.matches = still;
  vi.stubGlobal("matchMedia", () => motion);
  render(<RollUp px={3} />);
}

const slider = () => screen.getByRole<HTMLInputElement>("slider", { name: "Rolled up" });
const view = () => screen.getByRole("img", { name: /^The piece/ });
const svg = () => view().querySelector("svg")!;
const drawing = () => svg().innerHTML;
const count = (selector: string) => svg().querySelectorAll(selector).length;

test("shows the finished pipe: inside, then outside over it, with its contours", () => {
  show();
  expect(slider().value).toBe("100");
  expect(slider().getAttribute("aria-valuetext")).toBe("100 %");
  expect(count(".surface-inside")).toBe(1);
  expect(count(".surface-outside")).toBeGreaterThan(0);
});

test("the slider lays it flat: one surface, the face that is up", () => {
  show();
  fireEvent.change(slider(), { target: { value: "0" } });
  expect([count(".surface-inside"), count(".surface-outside")]).toEqual([1, 0]);
});

test("Roll up plays from the flat sheet to the pipe, and can be paused", () => {
  vi.useFakeTimers();
  show();
  fireEvent.click(screen.getByRole("button", { name: "Roll up" }));
  expect(slider().value).toBe("0");
  act(() => void vi.advanceTimersByTime(2000));
  const middle = slider().valueAsNumber;
  expect(middle).toBeGreaterThan(30);
  expect(middle).toBeLessThan(70);
  fireEvent.click(screen.getByRole("button", { name: "Pause" }));
  act(() => void vi.advanceTimersByTime(2000));
  expect(slider().valueAsNumber).toBe(middle);
  fireEvent.click(screen.getByRole("button", { name: "Roll up" }));
  act(() => void vi.advanceTimersByTime(4000));
  expect(slider().value).toBe("100");
  expect(screen.getByRole("button", { name: "Roll up" })).toBeTruthy();
});

test("where motion is unwelcome the verbs go to the end at once", async () => {
  show({ still: true });
  await userEvent.click(screen.getByRole("button", { name: "Lay flat" }));
  expect(slider().value).toBe("0");
  await userEvent.click(screen.getByRole("button", { name: "Roll up" }));
  expect(slider().value).toBe("100");
});

test("arrow keys and buttons turn it alike, i and the button bring the isometric view back", async () => {
  show();
  const isometric = drawing();
  view().focus();
  await userEvent.keyboard("{ArrowRight}{ArrowUp}");
  const turned = drawing();
  expect(turned).not.toBe(isometric);
  await userEvent.keyboard("i");
  expect(drawing()).toBe(isometric);
  await userEvent.click(screen.getByRole("button", { name: "Turn right" }));
  await userEvent.click(screen.getByRole("button", { name: "Turn up" }));
  expect(drawing()).toBe(turned);
  await userEvent.click(screen.getByRole("button", { name: "Isometric" }));
  expect(drawing()).toBe(isometric);
});

test("arrow keys on the slider do not turn it", () => {
  show();
  const before = drawing();
  fireEvent.keyDown(slider(), { key: "ArrowUp" });
  expect(drawing()).toBe(before);
});

test("dragging turns it, and takes no station in hand", () => {
  show();
  const before = drawing();
  fireEvent.pointerDown(svg(), { clientX: 150, clientY: 120, pointerId: 1 });
  fireEvent.pointerMove(svg(), { clientX: 190, clientY: 120, pointerId: 1 });
  fireEvent.pointerUp(svg(), { clientX: 190, clientY: 120, pointerId: 1 });
  expect(drawing()).not.toBe(before);
  expect(useApp.getState().held).toBeNull();
});

test("a press takes the station under it in hand, and a station in hand lights up", () => {
  show();
  expect(count(".role-in-hand")).toBe(0);
  fireEvent.pointerDown(svg(), { clientX: 150, clientY: 130, pointerId: 1 });
  fireEvent.pointerUp(svg(), { clientX: 150, clientY: 130, pointerId: 1 });
  expect(useApp.getState().held).not.toBeNull();
  expect(count(".role-in-hand")).toBeGreaterThan(0);
  act(() => {
    hold(null);
    point(3);
  });
  expect(count(".role-in-hand")).toBeGreaterThan(0);
});
