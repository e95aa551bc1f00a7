import type { Development, Vec2 } from "../../core/index";
import { dragged } from "../../drawing/handles/dragged";
import type { Fit, Values } from "../../drawing/handles/grip";
import type { Handle } from "../../drawing/handles/handles";
import type { Shown } from "../board/camera";
import { useInMotion } from "../board/inMotion";
import { mmPerPx } from "../board/view";
import type { Fault } from "../store/attempt";
import { abandon } from "../store/changes";
import { dropDraft, useApp } from "../store/store";
import { keysOf } from "./fieldTokens";
import { putValues } from "./putValues";

/** CSS pixels a press may stray and change nothing. */
const slack = 3;

export interface Beside {
  readonly fits: readonly Fit[];
  /** Why the handle did not follow. */
  readonly fault: Fault | null;
}

/** One drag of a handle, from the press on. */
export interface Drag {
  /** The pointer is so many pixels from where it was pressed; followed at the next frame. */
  readonly move: (by: Vec2, snap: boolean) => void;
  /** The pointer is up: the last move counts. */
  readonly end: () => void;
  /** As if it had never been. */
  readonly abandon: () => void;
}

/** Begins a drag of the handle on the board as it is shown. `say` is told what is new beside it, null at the end; `what` names it for undo. */
export function beginDrag(handle: Handle, development: Development, shown: Shown, what: string, say: (beside: Beside | null) => void): Drag {
  const gesture = {};
  const key = keysOf(handle)[0] ?? "";
  const perPx = mmPerPx(shown.view, shown.size);
  let next: { by: Vec2; snap: boolean } | null = null;
  let frame = 0;
  let last = "{}";
  let told = "";
  let moving = false;

  const takeBack = () => {
    dropDraft(key);
    abandon(gesture);
  };
  const put = (values: Values) => {
    const now = JSON.stringify(values);
    if (now === last) return;
    last = now;
    if (now === "{}") takeBack();
    else putValues(handle, development.job, values, what, gesture);
  };
  const follow = () => {
    frame = 0;
    if (!next) return;
    const { by, snap } = next;
    next = null;
    const { values, fits } = dragged(handle, { x: handle.at.x + by.x * perPx, y: handle.at.y - by.y * perPx }, development, snap);
    put(values);
    tell({ fits, fault: useApp.getState().drafts[key]?.fault ?? null });
  };
  const tell = (beside: Beside) => {
    const now = JSON.stringify(beside);
    if (now !== told) say(beside);
    told = now;
  };
  const leave = () => {
    cancelAnimationFrame(frame);
    useInMotion.setState({ by: null, held: null });
    say(null);
  };

  return {
    move(by, snap) {
      if (!moving && Math.hypot(by.x, by.y) <= slack) return;
      if (!moving) useInMotion.setState({ by: "handle", held: shown });
      moving = true;
      next = { by, snap };
      frame ||= requestAnimationFrame(follow);
    },
    end() {
      follow();
      dropDraft(key);
      leave();
    },
    abandon() {
      next = null;
      takeBack();
      leave();
    },
  };
}
