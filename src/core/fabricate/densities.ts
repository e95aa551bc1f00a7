// What sheet weighs. kg/m³; where a source gives a range, a usual value inside it.
// Source: simetric.co.uk, table of metals (steel, rolled 7850; stainless 7480 to 8000; copper 8930; brass, rolled 8430 to
// 8730; zinc 7135; lead 11340; aluminium 2700 to 2750). Galvanized steel as steel, its coat left out: common practice.

import type { Material } from "../job/fabricationChoices";

export const DENSITIES: Readonly<Record<Material, number>> = {
  steel: 7850, galvanized: 7850, stainless: 7900, aluminium: 2700, copper: 8930, brass: 8500, zinc: 7135, lead: 11_340,
};

/** kg of a sheet of `area` mm² and `thickness` mm, `density` in kg/m³; 0 without a thickness. */
export function sheetMass(area: number, thickness: number, density: number): number {
  return area * thickness * density * 1e-9;
}
