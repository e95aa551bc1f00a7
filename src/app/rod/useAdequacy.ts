import { useDeferredValue, useMemo } from "react";
import { adequacy, type Adequacy, type Piece } from "../../core/index";

/** How well the stations serve the end where a smooth curve strays most; null when neither end can be judged. Follows a moment behind. */
export function useAdequacy(piece: Piece, tolerance: number): Adequacy | null {
  const deferred = useDeferredValue(piece);
  return useMemo(() => worst(deferred, tolerance), [deferred, tolerance]);
}

function worst(piece: Piece, tolerance: number): Adequacy {
  const top = adequacy(piece, "top", { tolerance });
  const bottom = adequacy(piece, "bottom", { tolerance });
  return bottom.deviation > top.deviation ? bottom : top;
}
