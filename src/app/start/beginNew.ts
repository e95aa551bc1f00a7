import { changing } from "../store/changing";
import { focusField } from "./focusField";

/** Puts an empty pipe on the board, its diameter in hand. */
export function beginNew(): void {
  changing((by) => {
    by.newJob();
    focusField('[data-field="diameter"]');
  });
}
