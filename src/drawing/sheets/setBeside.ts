// Where beside a drawing do other things stand, each where there is room for it?

import type { Vec2 } from "../../core/index";
import { type Box, boxOfPoints, growBox } from "../box";
import type { Item } from "../display";
import { freeBox } from "../freeBox";

/** Something of a known size, to be put anywhere; mm. */
export interface Shape {
  readonly width: number;
  readonly height: number;
  /** With its top left corner there. */
  readonly at: (corner: Vec2) => readonly Item[];
}

interface Spacing {
  /** Round each thing in the free room it is put in, mm. */
  readonly air: number;
  /** Of it, what later things keep off on every side, mm. */
  readonly kept: number;
  /** Whether nothing may stand before what comes first. */
  readonly inOrder?: boolean;
}

/** The things in the window clear of what is taken, each in the first of its shapes that finds room; and those that found none. */
export function setBeside<Thing>(things: readonly Thing[], shapesOf: (thing: Thing) => readonly Shape[], window: Box, taken: readonly Box[], { air, kept, inOrder = false }: Spacing): { items: Item[]; left: Thing[] } {
  const all = [...taken];
  const items: Item[] = [];
  const left: Thing[] = [];
  for (const thing of things) {
    const [found] = inOrder && left.length > 0 ? [] : shapesOf(thing).flatMap((shape) => {
      const free = freeBox(window, all, { width: shape.width + air, height: shape.height + air });
      return free ? [{ ...shape, corner: { x: free.left + air / 2, y: free.top - air / 2 } }] : [];
    });
    if (!found) {
      left.push(thing);
      continue;
    }
    const { width, height, at, corner } = found;
    items.push(...at(corner));
    all.push(growBox(boxOfPoints([corner, { x: corner.x + width, y: corner.y - height }]), kept));
  }
  return { items, left };
}
