import { parseQuantity } from "../../core/index";
import type { NumberToken } from "../describe/token";
import { kindOf, stepOf, type Format } from "../quantity/format";
import type { Gesture } from "../store/history";
import { abandon, commit } from "../store/changes";
import { dropDraft, keepDraft } from "../store/store";
import { followSideways } from "./sidewaysDrag";

// What typing and stepping in a number field does; fetched at the first touch of the page.

/** Makes the change typed, or keeps the text with the reason when it is no quantity. */
export function finishTyping(token: NumberToken, typed: string, format: Format): void {
  const read = parseQuantity(typed, { units: format.units, kind: kindOf(token.quantity) });
  if (read.ok) commit(token.key, typed, (job) => token.put(job, read.value), token.label);
  else keepDraft(token.key, { text: typed, fault: { kind: "quantity", reason: read.reason }, change: null });
}

/** Steps the number typed, when it can be read; else the one in the job. */
export function stepFrom(token: NumberToken, text: string, steps: number, format: Format, gesture: Gesture): void {
  const read = parseQuantity(text, { units: format.units, kind: kindOf(token.quantity) });
  stepTo(token, read.ok ? read.value : token.value, steps, format, gesture);
}

/** Makes the value that lies so many steps from `from`, free of the rounding noise of adding up. The steps of one gesture are undone together. */
export function stepTo(token: NumberToken, from: number, steps: number, format: Format, gesture: Gesture): void {
  const value = Number((from + steps * stepOf(token.quantity, format.units)).toPrecision(12));
  commit(token.key, format.field(value, token.quantity), (job) => token.put(job, value), token.label, gesture);
}

/** Steps the number while its field, pressed so, is dragged sideways. */
export function dragSideways(press: PointerEvent, field: HTMLInputElement, token: NumberToken, format: Format): void {
  followSideways(press, field, {
    begin: () => token.value,
    move: (from, steps, gesture) => stepTo(token, from, steps, format, gesture),
    // What cannot be made is said while the hand is there; then the last good number stays.
    done: () => dropDraft(token.key),
    giveUp: (gesture) => {
      dropDraft(token.key);
      abandon(gesture);
    },
  });
}
