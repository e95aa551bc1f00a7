// What the sheet metal measures: its bounding sheet, area, mass and the length to be cut.

import { pathArea, pathLength } from "../geometry/path";
import { pathBounds } from "../geometry/pathBounds";
import type { Segment } from "../geometry/segment";
import type { Vec2 } from "../geometry/vector";
import type { FabricationChoices, Material } from "../job/fabricationChoices";
import { DENSITIES, sheetMass } from "./densities";

export interface Blank {
  /** Lower left and upper right corner of the smallest upright sheet, in pattern coordinates, mm. */
  readonly from: Vec2;
  readonly to: Vec2;
  readonly width: number;
  readonly height: number;
  /** mm²: of that sheet; of the net pattern; of the blank with its allowances. */
  readonly sheetArea: number;
  readonly netArea: number;
  readonly blankArea: number;
  /** mm: all cut lines, openings and slits. */
  readonly cutLength: number;
  /** mm */
  readonly thickness: number;
  readonly material: Material;
  /** kg/m³ */
  readonly density: number;
  /** kg: of one blank, of its bounding sheet; 0 without a thickness. */
  readonly mass: number;
  readonly sheetMass: number;
}

/** Sheet of `thickness` mm. */
export type Stock = Pick<FabricationChoices, "material" | "density"> & { readonly thickness: number };

/** The measures of a blank: its cut lines, the net loops they were made from (both signed by direction), slits in mm. */
export function blankOf(cut: readonly (readonly Segment[])[], net: readonly (readonly Segment[])[], slits: number, stock: Stock): Blank {
  const { thickness, material } = stock;
  const density = stock.density ?? DENSITIES[material];
  const { from, to } = pathBounds(cut.flat()) ?? { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };
  const [width, height] = [to.x - from.x, to.y - from.y];
  const area = (loops: readonly (readonly Segment[])[]) => loops.reduce((sum, loop) => sum + pathArea(loop), 0);
  const blankArea = area(cut);
  return {
    from, to, width, height, sheetArea: width * height, netArea: area(net), blankArea,
    cutLength: cut.reduce((sum, loop) => sum + pathLength(loop), slits), thickness, material, density,
    mass: sheetMass(blankArea, thickness, density), sheetMass: sheetMass(width * height, thickness, density),
  };
}
