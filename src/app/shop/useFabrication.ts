import { useDeferredValue, useMemo } from "react";
import type { Fabrication } from "../../core/index";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { fabricationOf } from "./fabricationOf";

/** What the shop makes of the job on the board; after the drawing, which does not wait for it. */
export function useFabrication(): Fabrication {
  const development = useDeferredValue(useApp(selectDevelopment));
  return useMemo(() => fabricationOf(development), [development]);
}
