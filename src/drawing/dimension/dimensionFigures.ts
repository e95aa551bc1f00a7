// The figures of the dimensions on a board: where each stands and which field of the job it states.

import type { Box } from "../box";
import type { Item, Ref } from "../display";
import { textBox } from "../lettering";

export interface DimensionFigure {
  readonly text: string;
  /** On the sheet, around the letters. */
  readonly box: Box;
  readonly clause: Ref["clause"];
  /** By its path in the part or the cut; null for a figure that follows from several fields. */
  readonly field: string | null;
}

/** All figures of dimensions among the items, in their order. */
export function dimensionFigures(items: readonly Item[]): DimensionFigure[] {
  return items.flatMap((item) => {
    if (item.kind !== "text" || item.ref?.field === undefined) return [];
    return [{ text: item.text, box: textBox(item), clause: item.ref.clause, field: item.ref.field }];
  });
}
