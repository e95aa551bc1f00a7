import type { Job } from "../../core/index";
import type { Values } from "../../drawing/handles/grip";
import type { Handle } from "../../drawing/handles/handles";
import { withValues } from "../../drawing/handles/withValues";
import type { Gesture } from "../store/history";
import { commit } from "../store/changes";
import { keysOf } from "./fieldTokens";

/**
 * Makes the values of a handle on top of `from`; what cannot be made stays a draft of the handle's first field, which says why.
 * `what` names it for undo; all of one gesture is undone together.
 */
export function putValues(handle: Handle, from: Job, values: Values, what: string, gesture: Gesture): void {
  const [key] = keysOf(handle);
  if (key === undefined) return;
  const [first = ""] = handle.fields;
  const typed = values[first];
  commit(key, typed === undefined || typed === null ? "" : String(typed), () => withValues(from, handle.clause, values), what, gesture);
}
