// @vitest-environment jsdom
import { act, cleanup, configure, fireEvent, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { BoardView } from "../../../src/app/board/BoardView";
import { look, useCamera } from "../../../src/app/board/camera";
import { useProjected } from "../../../src/app/board/projected";
import { useSmooth } from "../../../src/app/board/smooth/shown";
import { useTouch } from "../../../src/app/screen/touch";
import { setFine, useBetween } from "../../../src/app/store/between";
import { replaceJob } from "../../../src/app/store/changes";
import { hold, useApp } from "../../../src/app/store/store";
import type { Cut } from "../../../src/core/index";
import { hole, pipeWith, slant } from "../pipe";

// What is fetched later comes when a busy machine gets round to it.
configure({ asyncUtilTimeout: 30_000 });

// jsdom lays nothing out, watches no sizes, knows no media and captures no pointers.
beforeEach(async () => {
  vi.stubGlobal("ResizeObserver", class {
    observe() {}
    disconnect() {}
  });
  vi.stubGlobal("matchMedia", () => ({ matches: true, addEventListener: () => undefined, removeEventListener: () => undefined }));
  vi.spyOn(Element.prototype, "clientWidth", "get").mockReturnValue(1000);
  vi.spyOn(Element.prototype, "clientHeight", "get").mockReturnValue(600);
  vi.spyOn(Element.prototype, "getBoundingClientRect").mockReturnValue(new DOMRect(0, 0, 1000, 600));
  Element.prototype.setPointerCapture = () => {};
  Element.prototype.getAnimations = () => [];
  useTouch.setState({ touched: true });
  useSmooth.setState({ shown: false });
  useProjected.setState({ whose: "hand", kept: [] });
  replaceJob(pipeWith([slant, hole]));
  act(() => {
    look(null);
    hold(null);
    setFine(false);
  });
  render(<BoardView />);
  await screen.findByRole("button", { name: "Closer" });
});

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const steep: Cut = { id: "slope", on: true, kind: "plane", end: "top", angle: 60, direction: 180, at: "high", height: 220 };
const drawing = () => document.querySelector(".drawing")!;
const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));
const zoom = () => useCamera.getState().camera?.zoom ?? 1;
const sizes = () => new Set([...drawing().querySelectorAll(".letters")].map((one) => one.getAttribute("font-size")));
/** A place of the window over the middle of a block. */
const over = (block: "pattern" | "front") => {
  const { drawn, view, size } = useCamera.getState().shown!;
  const { left, right, bottom, top } = drawn.blocks[block].bounds;
  const perMm = size.width / (view.right - view.left);
  return { clientX: ((left + right) / 2 - view.left) * perMm, clientY: (view.top - (bottom + top) / 2) * perMm };
};

test("Closer draws the board larger with the same lettering; Fit shows it whole again", async () => {
  const before = sizes();
  const whole = drawing().getAttribute("viewBox");
  await press("Closer");
  expect(zoom()).toBeCloseTo(1.5, 9);
  expect(sizes()).toEqual(before);
  await press("Fit");
  expect(useCamera.getState().camera).toBeNull();
  expect(drawing().getAttribute("viewBox")).toBe(whole);
});

test("each view can fill the board by itself", async () => {
  for (const view of ["Front", "Top", "Side", "Pattern"]) {
    await press(`Show only: ${view}`);
    expect(useCamera.getState().camera?.anchor.block).toBe(view.toLowerCase());
  }
});

test("plus, minus and 0 on the board go closer, further and back to the whole; Shift and arrows move", () => {
  const board = screen.getByRole("region", { name: "Board" });
  fireEvent.keyDown(board, { key: "+" });
  fireEvent.keyDown(board, { key: "+" });
  expect(zoom()).toBeCloseTo(2.25, 9);
  const before = drawing().getAttribute("viewBox");
  fireEvent.keyDown(board, { key: "ArrowLeft", shiftKey: true });
  expect(drawing().getAttribute("viewBox")).not.toBe(before);
  expect(useApp.getState().held).toBeNull();
  fireEvent.keyDown(board, { key: "-" });
  expect(zoom()).toBeCloseTo(1.5, 9);
  fireEvent.keyDown(board, { key: "0" });
  expect(useCamera.getState().camera).toBeNull();
});

test("a drag moves the picture as it stands and takes no station in hand", () => {
  const runs = drawing().innerHTML;
  fireEvent.pointerDown(drawing(), { clientX: 500, clientY: 300, pointerId: 1, button: 0, pointerType: "mouse" });
  fireEvent.pointerMove(drawing(), { clientX: 540, clientY: 320, pointerId: 1, pointerType: "mouse" });
  expect((drawing() as SVGElement).style.transform).toBe("translate(40px, 20px) scale(1)");
  expect(drawing().innerHTML).toBe(runs);
  fireEvent.pointerUp(drawing(), { clientX: 540, clientY: 320, pointerId: 1, pointerType: "mouse" });
  fireEvent.click(drawing(), { clientX: 540, clientY: 320 });
  expect((drawing() as SVGElement).style.transform).toBe("");
  expect(useCamera.getState().camera).not.toBeNull();
  expect(useApp.getState().held).toBeNull();
});

test("the wheel goes closer with Ctrl, and not without it while the board has no focus", async () => {
  (document.activeElement as HTMLElement | null)?.blur();
  fireEvent.wheel(drawing(), { deltaY: -20, clientX: 500, clientY: 300 });
  expect((drawing() as SVGElement).style.transform).toBe("");
  fireEvent.wheel(drawing(), { deltaY: -20, clientX: 500, clientY: 300, ctrlKey: true });
  await waitFor(() => expect(zoom()).toBeCloseTo(Math.exp(0.2), 6));
});

test("projection lines are drawn for kept stations and for all", async () => {
  act(() => hold(3));
  await press("Keep this station");
  expect(useProjected.getState()).toEqual({ whose: "kept", kept: [3] });
  const lines = async () => (await waitFor(() => {
    const found = drawing().querySelectorAll(".projections .line");
    expect(found.length).toBeGreaterThan(0);
    return found;
  })).length;
  const kept = await lines();
  await userEvent.selectOptions(screen.getByLabelText("Projection lines"), "all");
  expect(await lines()).toBeGreaterThan(3 * kept);
  await userEvent.selectOptions(screen.getByLabelText("Projection lines"), "hand");
  expect(drawing().querySelector(".projections")).toBeNull();
});

test("a click with Shift keeps the station under it, another lets it go", () => {
  fireEvent.click(drawing(), { ...over("pattern"), shiftKey: true });
  expect(useProjected.getState().kept).toHaveLength(1);
  fireEvent.click(drawing(), { ...over("pattern"), shiftKey: true });
  expect(useProjected.getState().kept).toEqual([]);
});

test("with Alt, or Between stations pressed, a place between stations is pointed at and kept", async () => {
  const at = over("pattern");
  const between = { ...at, clientX: at.clientX + 7 };
  fireEvent.pointerMove(drawing(), { ...between, altKey: true, pointerType: "mouse" });
  expect(useBetween.getState().pointed).not.toBeNull();
  expect(useApp.getState().pointed).toBeNull();
  fireEvent.pointerMove(drawing(), { ...between, pointerType: "mouse" });
  expect(useBetween.getState().pointed).toBeNull();
  await press("Between stations");
  fireEvent.click(drawing(), between);
  expect(useBetween.getState().held).not.toBeNull();
});

test("Alt and the arrows step along the girth, Escape puts the place down", () => {
  const board = screen.getByRole("region", { name: "Board" });
  act(() => hold(3));
  fireEvent.keyDown(board, { key: "ArrowRight", altKey: true });
  // Station 3 stands at 53.01 mm.
  expect(useBetween.getState().held).toBe(54);
  fireEvent.keyDown(board, { key: "PageDown", altKey: true });
  expect(useBetween.getState().held).toBe(64);
  fireEvent.keyDown(board, { key: "Escape" });
  expect(useBetween.getState().held).toBeNull();
});

test("Smooth curve shows the gap enlarged, and Add this station adds one there", async () => {
  act(() => void replaceJob({ ...pipeWith([steep]), development: { ...pipeWith([]).development, stations: 8 } }));
  await press("Smooth curve");
  await waitFor(() => expect(drawing().querySelector(".smooth-layer circle")).not.toBeNull());
  expect((await screen.findByRole("region", { name: /smooth curve/ })).textContent).toMatch(/Top: strays .* mm at/);
  await press("Add this station");
  expect(useApp.getState().development.job.development.extra).toHaveLength(1);
});

test("Use so many stations takes the count that is enough", async () => {
  act(() => void replaceJob({ ...pipeWith([steep]), development: { ...pipeWith([]).development, stations: 4 } }));
  await press("Smooth curve");
  const use = await screen.findByRole("button", { name: /^Use \d+ stations$/ });
  const count = Number(/\d+/.exec(use.textContent ?? "")?.[0]);
  await userEvent.click(use);
  expect(useApp.getState().development.job.development.stations).toBe(count);
});

test("the projection symbol stands on the board and follows the job", async () => {
  const symbol = () => drawing().querySelector(".symbol title")?.textContent;
  await waitFor(() => expect(symbol()).toBe("First-angle projection"));
  act(() => void replaceJob({ ...useApp.getState().development.job, drawing: { ...useApp.getState().development.job.drawing, projection: "third" } }));
  expect(symbol()).toBe("Third-angle projection");
});
