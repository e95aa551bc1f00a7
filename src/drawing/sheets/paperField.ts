// The part of the paper that can be drawn on, once margins and the printer's own error are allowed for.

import type { Box } from "../box";
import { AS_DRAWN, type Page } from "./page";
import type { PageSetup } from "./setup";

export interface PaperField {
  /** The paper as it lies before the reader, mm. */
  readonly width: number;
  readonly height: number;
  readonly landscape: boolean;
  /** Inside the margins, in true mm. */
  readonly box: Box;
  readonly stretch: Page["stretch"];
}

/** Paper of the given size upright (mm), turned to lie when `landscape`. */
export function paperField(paper: { readonly width: number; readonly height: number }, landscape: boolean, { margin, correction }: Pick<PageSetup, "margin" | "correction">): PaperField {
  const [width, height] = landscape ? [paper.height, paper.width] : [paper.width, paper.height];
  const stretch = stretchOf(correction, landscape);
  const x = half(width, margin, stretch.x), y = half(height, margin, stretch.y);
  return { width, height, landscape, stretch, box: { left: width / 2 - x, right: width / 2 + x, bottom: height / 2 - y, top: height / 2 + y } };
}

function stretchOf(correction: PageSetup["correction"], landscape: boolean): Page["stretch"] {
  if (!correction) return AS_DRAWN;
  const { across, along } = correction;
  return landscape ? { x: along, y: across } : { x: across, y: along };
}

/** The margin is kept both in the file, which is stretched, and on the paper. */
function half(length: number, margin: number, stretch: number): number {
  return (length / 2 - margin) / Math.max(1, stretch);
}
