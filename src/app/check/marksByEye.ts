import { parseQuantity, type MarkingItem } from "../../core/index";
import type { Sheet } from "./sheet";

/** What the teacher's eye gives an item, as typed in the sheet; null where nothing is, or nothing that can be read. */
export function marksByEye({ marks }: Pick<Sheet, "marks">): (item: MarkingItem) => number | null {
  return ({ id }) => {
    const read = parseQuantity(marks[id] ?? "", { units: "mm", kind: "count" });
    return read.ok ? read.value : null;
  };
}
