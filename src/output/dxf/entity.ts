// One thing drawn in a DXF file, before it has its handle; and the tags of its places.

import type { Vec2 } from "../../core/index";
import type { Tag } from "./tag";

/** Kind, layer, tags of its own. */
export interface Entity {
  readonly kind: string;
  readonly layer: string;
  readonly tags: readonly Tag[];
}

/** How curves are written: as lines and arcs, each contour one closed polyline; or as they are, splines between lines and arcs. */
export type Curves = "arcs" | "splines";

export interface EntityOptions {
  readonly curves: Curves;
  /** Curves become arcs within so many mm. */
  readonly tolerance: number;
  /** File units in a mm. */
  readonly scale: number;
}

/** Shorter segments, mm, are left out; things nearer than this to each other are one. */
export const NOTHING = 1e-6;

/** A place in the plane, its x under this code. */
export function place(code: number, { x, y }: Vec2, scale: number): Tag[] {
  return [[code, x * scale], [code + 10, y * scale]];
}

/** The same with a height of 0. */
export function place3(code: number, at: Vec2, scale: number): Tag[] {
  return [...place(code, at, scale), [code + 20, 0]];
}
