import type { Segment } from "../../core/index";
import type { Box } from "../box";
import type { Item } from "../display";

/** What is laid out: everything drawn, and what is cut, whose inside is kept even where nothing is drawn on it. */
export interface Tiled {
  readonly art: readonly Item[];
  readonly bounds: Box;
  readonly outlines: readonly (readonly Segment[])[];
}
