// The list of what is to be cut: one row a kind of part.

import type { Material } from "../job/fabricationChoices";
import type { Blank } from "./blank";
import type { EndPlate } from "./endPlate";
import type { FabricatedPiece } from "./fabricatedPiece";

/** Lengths in mm, areas in mm², masses in kg. */
export interface PartRow {
  readonly name: string;
  readonly kind: "pipe" | "plate";
  /** Number off. */
  readonly quantity: number;
  readonly material: Material;
  readonly thickness: number;
  /** Of the bounding sheet. */
  readonly width: number;
  readonly height: number;
  readonly blankArea: number;
  readonly cutLength: number;
  /** Of one, and of all. */
  readonly mass: number;
  readonly totalMass: number;
}

/** The rows of the list, pieces before plates. */
export function partList(pieces: readonly FabricatedPiece[], plates: readonly EndPlate[]): PartRow[] {
  return [...pieces.map((piece) => row(piece, "pipe")), ...plates.map((plate) => row(plate, "plate"))];
}

function row({ name, quantity, blank }: { name: string; quantity: number; blank: Blank }, kind: PartRow["kind"]): PartRow {
  const { material, thickness, width, height, blankArea, cutLength, mass } = blank;
  return { name, kind, quantity, material, thickness, width, height, blankArea, cutLength, mass, totalMass: mass * quantity };
}
