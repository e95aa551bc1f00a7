// The ordinates of a pattern in figures, each along its element: one of a whole element just off the stretch-out line, else beside the
// ends they belong to. One that finds no clear place is left to the table.

import type { Piece } from "../../core/index";
import type { Block } from "../board/board";
import { boundsOfItem } from "../bounds";
import { clearSpace } from "../clearSpace";
import { unionOf } from "../view/contour";
import type { TextItem } from "../display";
import type { Figures } from "../figures";
import { textWidth } from "../lettering";
import { metricsFor } from "../metrics";
import { onSheet } from "../place";

/** Between a figure and its element, and the ends of the element, in gaps. */
const BESIDE = 0.6, BEFORE = 1.5;

/** Which side of the element, towards the smaller girth first, and how far along it, paper mm, are tried. */
const SIDES = ["before", "after"] as const;
const SHIFTS = [0, 3, 6, 10, 15, 20];

/** Elements as far apart as this, lettering heights, have room for a figure of each. */
const APART = 2.7;

/** Paper mm a figure keeps from what is drawn of the pattern. */
const CLEAR = 0.3;

/** Heights under this, mm, are the base line itself. */
const NOTHING = 1e-6;

interface Wanted {
  readonly z: number;
  /** Where along the element the figure begins or ends, mm. */
  readonly at: number;
  readonly align: "start" | "end";
}

/** The figures of one pattern block; each carries the index of its station. The seam's are written once, at its closing edge. */
export function ordinateFigures({ place, items }: Block, piece: Piece, figures: Figures, lettering: number): TextItem[] {
  const { gap } = metricsFor(lettering);
  const space = clearSpace(CLEAR);
  space.take(items);
  const ends = piece.stations.map(({ girth }) => girth * place.scale);
  return piece.stations.flatMap(({ girth, before, after }, station) => {
    if (station === 0) return [];
    // Beyond the element only where the figure would not be taken for that of the next.
    const beyond = (ends[station + 1] ?? -Infinity) - (ends[station] ?? 0) > APART * lettering;
    const kept = unionOf([...before, ...after]);
    return kept.flatMap(({ from, to }) => wantedOn(from, to, kept.length).flatMap((wanted): TextItem[] => {
      const width = textWidth(figures.length(wanted.z), lettering) + 2 * BEFORE * gap;
      const tries = (beyond ? SIDES : SIDES.slice(0, 1)).flatMap((side) => SHIFTS.filter((shift) => width + shift <= (to - from) * place.scale).map((shift) => figureAt(wanted, girth, side, shift)));
      const text = tries.find((one) => space.isFree(boundsOfItem(one)));
      if (!text) return [];
      space.take([text]);
      return [{ ...text, ref: { clause: "stations", station } }];
    }));
  });

  function figureAt({ z, at, align }: Wanted, girth: number, side: (typeof SIDES)[number], shift: number): TextItem {
    const inward = align === "start" ? 1 : -1;
    const across = side === "before" ? -BESIDE * gap : BESIDE * gap + lettering;
    return {
      kind: "text", pen: "lettering", text: figures.length(z), height: lettering, align, turn: place.turn === 0 ? Math.PI / 2 : 0,
      at: onSheet(place, { x: girth + across / place.scale, y: at + (inward * (BEFORE * gap + shift)) / place.scale }),
    };
  }
}

/** What is written on one kept stretch. */
function wantedOn(from: number, to: number, count: number): Wanted[] {
  const stands = Math.abs(from) < NOTHING;
  if (stands && count === 1) return [{ z: to, at: from, align: "start" }];
  return [...(stands ? [] : [{ z: from, at: from, align: "start" as const }]), { z: to, at: to, align: "end" }];
}
