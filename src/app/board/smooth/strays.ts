import { smoothGap, type Adequacy, type Piece, type SmoothGap } from "../../../core/index";
import { adequaciesOf } from "../../rod/useAdequacy";

/** One end of the piece and how far the smooth curve strays there. */
export interface Stray {
  readonly end: "top" | "bottom";
  /** Names the enlarged detail. */
  readonly letter: "A" | "B";
  readonly adequacy: Adequacy;
  /** The greatest gap; null where the curve is the edge, or where there is none. */
  readonly gap: SmoothGap | null;
}

/** Under a thousandth of a millimetre nobody marks out; there the curve is the edge. */
const seen = 0.001;

/** Both ends of a piece. */
export function straysOf(piece: Piece, tolerance: number): readonly Stray[] {
  const { top, bottom } = adequaciesOf(piece, tolerance);
  return ([["top", "A", top], ["bottom", "B", bottom]] as const).map(([end, letter, adequacy]) => ({
    end, letter, adequacy, gap: adequacy.deviation < seen || adequacy.deviation === Infinity ? null : smoothGap(piece, end, adequacy),
  }));
}
