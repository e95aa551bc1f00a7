// How much does it matter on which surface of the wall a cut is found? Each station's ends against those on the mean one.

import type { Cutter } from "../cut/cutter";
import { spansOf } from "../trim/spans";
import { stretchesAround } from "../trim/stretches";
import type { Piece } from "../part/pipePiece";

/** Heights in mm, null where nothing is kept. Differences: as found less on the mean surface. */
export interface StationHeights {
  readonly label: string;
  /** Direction in radians. */
  readonly theta: number;
  readonly bottom: number | null;
  readonly top: number | null;
  readonly bottomMean: number | null;
  readonly topMean: number | null;
  readonly bottomDifference: number | null;
  readonly topDifference: number | null;
}

/** The ends of every station of a piece, as found and on the mean surface. The cuts stand where they stand; only the surface changes. */
export function stationHeights({ form, cutters, stations, pattern }: Piece): StationHeights[] {
  const onMean = cutters.map((cutter): Cutter => ({ ...cutter, radius: form.mean / 2 }));
  const spans = spansOf(form, onMean, pattern.seam);
  return stations.map(({ label, theta, bottom, top }) => {
    const { before, after } = stretchesAround(form, onMean, spans, theta);
    const all = [...before, ...after];
    const bottomMean = all.length > 0 ? Math.min(...all.map(({ from }) => from)) : null;
    const topMean = all.length > 0 ? Math.max(...all.map(({ to }) => to)) : null;
    return {
      label, theta, bottom, top, bottomMean, topMean,
      bottomDifference: difference(bottom, bottomMean), topDifference: difference(top, topMean),
    };
  });
}

function difference(found: number | null, mean: number | null): number | null {
  return found === null || mean === null ? null : found - mean;
}
