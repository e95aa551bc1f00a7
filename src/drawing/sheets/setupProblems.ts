// What is wrong with the paper chosen, before anything is laid on it.

import type { Problem } from "../../core/index";
import { BAND, LEAST_FIELD, mostOverFoot } from "./pageBands";
import { type PaperField, paperField } from "./paperField";
import { paperNamed, papersOf } from "./papers";
import { MARGIN_SIZE, MOST_CORRECTION, OWN_SIZE, type PageSetup, type PrinterCorrection } from "./setup";

/** Everything wrong with a setup; none when pages can be made with it. */
export function setupProblems(setup: PageSetup): Problem[] {
  const { paper, margin, overlap, correction } = setup;
  const sizes = paper.kind === "own" ? [range("paper.width", paper.width, OWN_SIZE), range("paper.height", paper.height, OWN_SIZE)] : paper.kind === "roll" ? [range("paper.width", paper.width, OWN_SIZE)] : [];
  const alone = [...sizes.flat(), ...range("margin", margin, MARGIN_SIZE), ...range("overlap", overlap, MARGIN_SIZE), ...(correction ? correctionProblems(correction) : [])];
  return alone.length > 0 ? alone : roomProblems(setup);
}

/** A correction beyond ±5 % is a slip of the rule or a page printed to fit. */
export function correctionProblems(correction: PrinterCorrection): Problem[] {
  return (["across", "along"] as const).flatMap((axis): Problem[] => {
    const value = correction[axis];
    const within = Math.abs(value - 1) <= MOST_CORRECTION + 1e-9;
    return within ? [] : [{ code: "correction-too-large", field: `correction.${axis}`, value, min: 1 - MOST_CORRECTION, max: 1 + MOST_CORRECTION }];
  });
}

function range(field: string, value: number, { min, max }: { readonly min: number; readonly max: number }): Problem[] {
  if (!Number.isFinite(value)) return [{ code: "not-a-number", field, value }];
  if (value < min) return [{ code: "too-small", field, value, min, max }];
  return value > max ? [{ code: "too-large", field, value, min, max }] : [];
}

/** Room for the bands of every page, and for more than two overlaps between them. */
function roomProblems(setup: PageSetup): Problem[] {
  const { box } = smallestField(setup);
  const width = box.right - box.left, height = box.top - box.bottom;
  const least = Math.min(width, height);
  if (least < LEAST_FIELD) return [{ code: "paper-without-room", field: "paper", value: least, min: LEAST_FIELD }];
  const rooms = [width - BAND, height - BAND, height - BAND - mostOverFoot(width), width - BAND - mostOverFoot(height)];
  const most = Math.floor(Math.min(...rooms) / 2) - 1;
  return setup.overlap > most ? [{ code: "overlap-too-large", field: "overlap", value: setup.overlap, max: most }] : [];
}

function smallestField(setup: PageSetup): PaperField {
  const { paper } = setup;
  switch (paper.kind) {
    case "named":
      return paperField(paperNamed(paper.name), false, setup);
    case "own":
      return paperField(paper, false, setup);
    case "roll":
      return paperField({ width: paper.width, height: OWN_SIZE.max }, false, setup);
    case "smallest":
      return paperField(papersOf(paper.family)[0] ?? { width: 0, height: 0 }, false, setup);
  }
}
