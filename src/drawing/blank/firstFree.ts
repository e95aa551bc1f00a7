// Lettering that meets nothing: the first of several places that is free.

import { boundsOf } from "../bounds";
import type { ClearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";

/** A text and what goes with it: the stroke or arrow that leads to it. */
export interface Lettered {
  readonly text: TextItem;
  readonly leading?: readonly Item[];
}

/** The items of the first choice whose text meets nothing and whose leading lines meet no figure, taken in `space`; none when every place is taken. */
export function firstFree(choices: Iterable<Lettered>, space: ClearSpace): Item[] {
  for (const { text, leading = [] } of choices) {
    if (!space.isFree(boundsOf([text])) || space.meetsFigures(leading)) continue;
    const items = [...leading, text];
    space.take(items);
    return items;
  }
  return [];
}
