import type { Item } from "../display";

/** Whether an item is a dimension with its arrowheads and figure, or words; the numbers of the stations are none. */
export function isMeasure(item: Item): boolean {
  if (item.kind === "group" || item.kind === "surface") return false;
  return item.kind === "arrowhead" || item.pen === "dimension" || (item.kind === "text" && item.ref?.station === undefined);
}
