import { create } from "zustand";
import type { Development, Vec2 } from "../../core/index";
import type { Anchor } from "../../drawing/board/anchor";
import type { Board, BoardOptions } from "../../drawing/board/board";
import type { Box } from "../../drawing/box";
import type { Size } from "../screen/useSize";

/** How the board is looked at when not whole: how many times larger, and which point of it stands where in the window. */
export interface Camera {
  readonly zoom: number;
  readonly anchor: Anchor;
  /** Parts of the window's width from the left and of its height from the top. */
  readonly at: Vec2;
}

/** What is on the board now, for those who move it. */
export interface Shown {
  readonly development: Development;
  /** The board as it fits whole, and as it is drawn. */
  readonly fit: Board;
  readonly drawn: Board;
  /** What of the sheet is seen whole, and now, in mm, and how large that is on the screen, in CSS pixels. */
  readonly whole: Box;
  readonly view: Box;
  readonly size: Size;
  /** CSS pixels a sheet mm. */
  readonly px: number;
  readonly options: BoardOptions;
}

export const useCamera = create<{ readonly camera: Camera | null; readonly shown: Shown | null }>()(() => ({ camera: null, shown: null }));

/** Looks at the board that way; null shows it whole. */
export function look(camera: Camera | null): void {
  useCamera.setState({ camera });
}
