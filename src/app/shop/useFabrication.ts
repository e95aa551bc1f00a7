import { useDeferredValue, useMemo } from "react";
import type { Fabrication } from "../../core/index";
import { useAtRest } from "../board/useAtRest";
import { useUnhurried } from "../board/useUnhurried";
import { selectDevelopment } from "../store/select";
import { fabricationOf } from "./fabricationOf";

/** What the shop makes of the job on the board; after the drawing, which does not wait for it, and at the end of a drag. */
export function useFabrication(): Fabrication {
  const development = useDeferredValue(useAtRest(useUnhurried(selectDevelopment)));
  return useMemo(() => fabricationOf(development), [development]);
}
