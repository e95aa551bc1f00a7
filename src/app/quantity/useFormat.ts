import { useMemo } from "react";
import { useShallow } from "zustand/react/shallow";
import { selectUnits } from "../store/select";
import { useSettings } from "../store/settings";
import { useApp } from "../store/store";
import { formatOf, type Format } from "./format";

/** How this screen writes quantities now. */
export function useFormat(): Format {
  const units = useApp(selectUnits);
  const settings = useSettings(useShallow(({ places, denominator, comma }) => ({ places, denominator, comma })));
  return useMemo(() => formatOf(units, settings), [units, settings]);
}
