import { parseQuantity, type MarkingItem } from "../../core/index";
import type { Fault } from "../store/attempt";
import type { Sheet } from "./sheet";

// What the teacher's eye gives an item, as typed: between none and the item's marks; where marks are taken off, how often, a whole number.

export type EyeMarks = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly fault: Fault };

/** What stands in the sheet for an item; null where nothing does. */
export function eyeMarks({ marks }: Pick<Sheet, "marks">, item: MarkingItem): EyeMarks | null {
  const text = marks[item.id] ?? "";
  if (text.trim() === "") return null;
  const read = parseQuantity(text, { units: "mm", kind: "count" });
  if (!read.ok) return { ok: false, fault: { kind: "quantity", reason: read.reason } };
  const { value } = read;
  const field = "marking.items.marks";
  if (value < 0) return { ok: false, fault: { kind: "problem", problem: { code: "too-small", field, value, min: 0 } } };
  if (item.marks >= 0) return value <= item.marks ? read : { ok: false, fault: { kind: "problem", problem: { code: "too-large", field, value, max: item.marks, detail: { marks: item.marks } } } };
  return Number.isInteger(value) ? read : { ok: false, fault: { kind: "problem", problem: { code: "not-whole", field, value } } };
}

/** Items of whose marks something stands in the sheet that cannot be given: it is not counted. */
export function oddMarks(sheet: Pick<Sheet, "marks">, items: readonly MarkingItem[]): MarkingItem[] {
  return items.filter((item) => eyeMarks(sheet, item)?.ok === false);
}

/** What the teacher's eye gives an item; null where nothing is typed, or nothing that can be given. */
export function marksByEye(sheet: Pick<Sheet, "marks">): (item: MarkingItem) => number | null {
  return (item) => {
    const read = eyeMarks(sheet, item);
    return read?.ok ? read.value : null;
  };
}
