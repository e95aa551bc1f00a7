// @vitest-environment jsdom
import { act, cleanup, render } from "@testing-library/react";
import { afterEach, expect, test, vi } from "vitest";
import { useSmooth } from "../../../src/app/board/smooth/shown";
import { BoardCorner } from "../../../src/app/rollUp/BoardCorner";
import { useRollUpPlace } from "../../../src/app/rollUp/place";
import { board } from "../../../src/drawing/board/board";
import { viewOf } from "../../../src/app/board/view";
import { developed, hole, pipeWith, slant } from "../pipe";

// jsdom knows no sizes.
vi.stubGlobal("ResizeObserver", class { observe() {} disconnect() {} });

afterEach(() => {
  cleanup();
  useSmooth.setState({ shown: false });
});

/** A board of 1080 by 620 pixels, 3 of them a mm, with a free corner. */
function corner() {
  const size = { width: 1080, height: 620 };
  const drawn = board(developed(pipeWith([slant, hole])), { width: 360, height: 620 / 3 });
  return render(<BoardCorner board={drawn} view={viewOf(drawn.bounds, 360, 620 / 3)} size={size} px={3} away={false} />).container;
}

test("the roll-up stands in the free corner", () => {
  useRollUpPlace.setState({ onBoard: false });
  expect(corner().querySelector(".board-corner")).not.toBeNull();
  expect(useRollUpPlace.getState().onBoard).toBe(true);
});

test("what is said of the smooth curve at the foot stays there though the corner has room, so that the board does not change its size to and fro", () => {
  useRollUpPlace.setState({ onBoard: false });
  useSmooth.setState({ shown: true });
  const box = corner();
  expect(box.querySelector(".board-corner")).toBeNull();
  expect(useRollUpPlace.getState().onBoard).toBe(false);
  act(() => useSmooth.setState({ shown: false }));
  expect(box.querySelector(".board-corner")).not.toBeNull();
});
