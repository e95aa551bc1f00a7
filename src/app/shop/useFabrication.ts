import { useDeferredValue, useMemo } from "react";
import type { Fabrication } from "../../core/index";
import { useRested } from "../board/useRested";
import { selectDevelopment } from "../store/select";
import { fabricationOf } from "./fabricationOf";

/** What the shop makes of the job on the board; after the drawing, which does not wait for it, and at the end of a drag. */
export function useFabrication(): Fabrication {
  const development = useDeferredValue(useRested(selectDevelopment));
  return useMemo(() => fabricationOf(development), [development]);
}
