// @vitest-environment jsdom
import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Shown } from "../../../src/app/board/camera";
import { useHeldShown } from "../../../src/app/board/heldShown";
import { useNowAndThen } from "../../../src/app/board/useNowAndThen";

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  useHeldShown.setState({ held: null });
  vi.useRealTimers();
});

const take = () => act(() => useHeldShown.setState({ held: {} as Shown }));
const drop = () => act(() => useHeldShown.setState({ held: null }));

test("useNowAndThen is the value itself while nothing is dragged", () => {
  const { result, rerender } = renderHook(({ value }) => useNowAndThen(value), { initialProps: { value: 1 } });
  rerender({ value: 2 });
  expect(result.current).toBe(2);
});

test("useNowAndThen follows a drag every 0.2 s, and at once when it ends", () => {
  const { result, rerender } = renderHook(({ value }) => useNowAndThen(value), { initialProps: { value: 1 } });
  rerender({ value: 2 });
  take();
  for (const value of [3, 4]) rerender({ value });
  expect(result.current).toBe(2);
  act(() => void vi.advanceTimersByTime(200));
  expect(result.current).toBe(4);
  rerender({ value: 5 });
  expect(result.current).toBe(4);
  drop();
  expect(result.current).toBe(5);
});
