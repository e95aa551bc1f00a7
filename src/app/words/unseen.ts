import type { Mistake } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";

// Mistakes that would not have shown in the readings taken, in a sentence: they were neither found nor ruled out.

/** Stations named one by one; more of them are counted. */
const most = 4;

/** The sentence; null when every known mistake would have shown. */
export function unseenSentence(unseen: readonly Mistake[], trade: TradeWords): string | null {
  const said = [...new Set([...slips(unseen), ...unseen.flatMap((mistake) => unseenWords(mistake, trade))])];
  return said.length === 0 ? null : `Would not have shown in these readings: ${said.join("; ")}.`;
}

function unseenWords(mistake: Mistake, { girth, element }: TradeWords): string[] {
  switch (mistake.kind) {
    case "chords":
      return [mistake.done ? `the ${girth} stepped off with chords` : `the ${girth} taken as π × diameter`];
    case "basis":
      return ["another diameter of the wall"];
    case "radius":
      return ["the radius taken for the diameter, or the other way round"];
    case "seam":
      return [mistake.turn === 180 ? "the seam half a turn off" : mistake.turn % 180 === 90 ? "the seam a quarter turn off" : "the seam some stations off"];
    case "reversed":
      return ["the order of the stations reversed"];
    case "datum":
    case "otherEnd":
      return ["ordinates measured from another line"];
    case "spaces":
      return ["a space too many or too few"];
    case "skipped":
    case "repeated":
      return [];
    case "angle":
      return ["another angle of the cut"];
    case "direction":
      return ["a cut that faces another way"];
    case "scale":
      return ["another scale"];
    case "critical":
      return [`the ${element} left out where the edge turns between stations`];
  }
}

/** "an ordinate left out or taken twice at station 1 or 15" */
function slips(unseen: readonly Mistake[]): string[] {
  const stations = [...new Set(unseen.flatMap((mistake) => (mistake.kind === "skipped" || mistake.kind === "repeated" ? [mistake.at] : [])))].sort((a, b) => a - b);
  if (stations.length === 0) return [];
  return [`an ordinate left out or taken twice ${stations.length > most ? `at one of ${stations.length} stations` : `at station ${stations.join(" or ")}`}`];
}
