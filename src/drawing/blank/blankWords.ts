// The words on a blank, a template and an end plate. The caller may pass its own.

import type { Allowance, FabricatedPiece, Mark } from "../../core/index";
import { ENGLISH_MATERIAL, type MaterialWords } from "../materialWords";

export interface BlankWords {
  readonly face: Readonly<Record<FabricatedPiece["face"], string>>;
  readonly purpose: Readonly<Record<FabricatedPiece["purpose"], string>>;
  /** Said of the mirror image of what is described. */
  readonly oppositeHand: string;
  readonly net: string;
  readonly seam: string;
  /** At the arrow to the top end, and at the arrow along the way the blank is rolled. */
  readonly top: string;
  readonly rolled: string;
  readonly direction: Readonly<Record<Extract<Mark, { kind: "quarter" }>["direction"], string>>;
  readonly allowance: Readonly<Record<Allowance["kind"], string>>;
  readonly place: Readonly<Record<Allowance["place"], string>>;
  readonly rootGap: string;
  /** Number off: "3 off". */
  readonly off: string;
  readonly material: MaterialWords;
  /** On an end plate. */
  readonly highSide: string;
  readonly seenFromAbove: string;
  readonly gap: string;
  /** On the plate of a shaped end. */
  readonly bent: string;
}

export const ENGLISH_BLANK: BlankWords = {
  face: { inside: "inside up", outside: "outside up" },
  purpose: { blank: "blank to roll", wrap: "template to wrap round" },
  oppositeHand: "opposite hand",
  net: "net, no allowances",
  seam: "seam",
  top: "top",
  rolled: "roll",
  direction: { front: "front", right: "right", back: "back", left: "left" },
  allowance: { lap: "lap", grooved: "groove", hem: "hem", "double-hem": "double hem", wired: "wired edge", flange: "flange" },
  place: { "seam-start": "seam", "seam-end": "seam", top: "top", bottom: "bottom" },
  rootGap: "root gap",
  off: "off",
  material: ENGLISH_MATERIAL,
  highSide: "high side",
  seenFromAbove: "seen from above",
  gap: "gap",
  bent: "bend to the profile",
};
