import { useDeferredValue } from "react";
import { adequacy, type Adequacy, type Piece } from "../../core/index";
import { useAtRest } from "../board/useAtRest";

/** How well the stations serve each end. */
export interface Adequacies {
  readonly top: Adequacy;
  readonly bottom: Adequacy;
}

/** How well the stations serve the end where a smooth curve strays most. Follows a moment behind the drawing, and behind a drag at its end. */
export function useAdequacy(piece: Piece, tolerance: number): Adequacy {
  const { top, bottom } = adequaciesOf(useDeferredValue(useAtRest(piece)), tolerance);
  return bottom.deviation > top.deviation ? bottom : top;
}

let last: { readonly piece: Piece; readonly tolerance: number; readonly adequacies: Adequacies } | null = null;

/** Worked out once for all who ask about the same piece. */
export function adequaciesOf(piece: Piece, tolerance: number): Adequacies {
  if (last?.piece !== piece || last.tolerance !== tolerance) {
    last = { piece, tolerance, adequacies: { top: adequacy(piece, "top", { tolerance }), bottom: adequacy(piece, "bottom", { tolerance }) } };
  }
  return last.adequacies;
}
