import { useMemo } from "react";
import { selectUnits } from "../store/select";
import { useSettings } from "../store/settings";
import { useApp } from "../store/store";
import { formatOf, type Format } from "./format";

/** How this screen writes quantities now. */
export function useFormat(): Format {
  const units = useApp(selectUnits);
  const places = useSettings((settings) => settings.places);
  const denominator = useSettings((settings) => settings.denominator);
  const comma = useSettings((settings) => settings.comma);
  const words = useSettings((settings) => settings.words);
  return useMemo(() => formatOf(units, { places, denominator, comma, words }), [units, places, denominator, comma, words]);
}
