import { useDeferredValue } from "react";
import { adequacy, type Adequacy, type Piece } from "../../core/index";

/** How well the stations serve the end where a smooth curve strays most. Follows a moment behind the drawing. */
export function useAdequacy(piece: Piece, tolerance: number): Adequacy {
  return adequacyOf(useDeferredValue(piece), tolerance);
}

let last: { readonly piece: Piece; readonly tolerance: number; readonly adequacy: Adequacy } | null = null;

/** Worked out once for all who ask about the same piece. */
function adequacyOf(piece: Piece, tolerance: number): Adequacy {
  if (last?.piece !== piece || last.tolerance !== tolerance) last = { piece, tolerance, adequacy: worst(piece, tolerance) };
  return last.adequacy;
}

function worst(piece: Piece, tolerance: number): Adequacy {
  const top = adequacy(piece, "top", { tolerance });
  const bottom = adequacy(piece, "bottom", { tolerance });
  return bottom.deviation > top.deviation ? bottom : top;
}
