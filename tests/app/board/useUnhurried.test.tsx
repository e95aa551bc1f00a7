// @vitest-environment jsdom
import { act, cleanup, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { useInMotion } from "../../../src/app/board/inMotion";
import { useInTurn } from "../../../src/app/board/useInTurn";
import { useRested } from "../../../src/app/board/useRested";
import { useUnhurried } from "../../../src/app/board/useUnhurried";
import { useApp, type AppState } from "../../../src/app/store/store";

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  cleanup();
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

test("useUnhurried follows a drag in its turn, and at once when it ends", () => {
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

test("those that wait take turns, one at every second frame", () => {
  point(2);
  const { result } = renderHook(() => [useUnhurried(pointed), useUnhurried(pointed)]);
  take();
  point(3);
  const seen = [0, 1, 2, 3, 4].map(() => {
    act(() => void vi.advanceTimersToNextFrame());
    return result.current.join();
  });
  expect(seen.at(-1)).toBe("3,3");
  expect(seen.filter((one) => one === "3,2")).toHaveLength(2);
});

test("useRested stays as it was while a hand drags", () => {
  point(2);
  const { result } = renderHook(() => useRested(pointed));
  take();
  point(3);
  act(() => void vi.advanceTimersByTime(500));
  expect(result.current).toBe(2);
  drop();
  expect(result.current).toBe(3);
});

test("useInTurn gives a value on a turn later while a hand drags, and at once at any other time", () => {
  const { result, rerender } = renderHook(({ value }) => useInTurn(value), { initialProps: { value: 1 } });
  rerender({ value: 2 });
  expect(result.current).toBe(2);
  take();
  rerender({ value: 3 });
  expect(result.current).toBe(2);
  act(() => void vi.advanceTimersByTime(100));
  expect(result.current).toBe(3);
  rerender({ value: 4 });
  drop();
  expect(result.current).toBe(4);
});
