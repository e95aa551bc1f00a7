import type { Fabrication } from "../../core/index";
import { cutParts, inOneRow } from "../../drawing/blank/cutParts";
import type { Item } from "../../drawing/display";
import type { Format } from "../quantity/format";

/** The drawing of a cut file: all parts side by side at full size, mm. */
export function cutItems(fabrication: Fabrication, format: Format): Item[] {
  return inOneRow(cutParts(fabrication, { figures: format }));
}
