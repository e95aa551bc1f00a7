import leanToVent from "./1-lean-to-vent.json";
import ridgeCap from "./2-ridge-cap.json";
import dryingHood from "./3-drying-hood.json";
import chartLamp from "./4-chart-lamp.json";
import pierStrut from "./5-pier-strut.json";
import mastSleeve from "./6-mast-sleeve.json";

// The ready jobs: fitting out the small observatory on Saltmere Hill, an invented place.

/** A ready job; `data` is as from a job file, to be read with `parseJob`. */
export interface Example {
  id: string;
  data: { title: string; note: string };
}

/** In the order of showing: the first is the classic school piece, later ones need more of the board. */
export const EXAMPLES: readonly Example[] = [
  { id: "lean-to-vent", data: leanToVent },
  { id: "ridge-cap", data: ridgeCap },
  { id: "drying-hood", data: dryingHood },
  { id: "chart-lamp", data: chartLamp },
  { id: "pier-strut", data: pierStrut },
  { id: "mast-sleeve", data: mastSleeve },
];
