// @vitest-environment jsdom
import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { useInMotion } from "../../../src/app/board/inMotion";
import { useUnhurried } from "../../../src/app/board/useUnhurried";
import { useApp, type AppState } from "../../../src/app/store/store";

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  act(() => useInMotion.setState({ by: null }));
  vi.useRealTimers();
});

const take = () => act(() => useInMotion.setState({ by: "number" }));
const drop = () => act(() => useInMotion.setState({ by: null }));
const point = (pointed: number) => act(() => useApp.setState({ pointed }));
const pointed = (state: AppState) => state.pointed;

test("useUnhurried is what the app holds while nothing is dragged", () => {
  const { result } = renderHook(() => useUnhurried(pointed));
  point(2);
  expect(result.current).toBe(2);
});

test("useUnhurried follows a drag every 0.15 s, and at once when it ends", () => {
  point(2);
  const { result } = renderHook(() => useUnhurried(pointed));
  take();
  for (const one of [3, 4]) point(one);
  expect(result.current).toBe(2);
  act(() => void vi.advanceTimersByTime(150));
  expect(result.current).toBe(4);
  point(5);
  expect(result.current).toBe(4);
  drop();
  expect(result.current).toBe(5);
  point(6);
  expect(result.current).toBe(6);
});

test("useUnhurried waits only for the hand it is told of", () => {
  point(2);
  const { result } = renderHook(() => useUnhurried(pointed, "handle"));
  take();
  point(3);
  expect(result.current).toBe(3);
});
