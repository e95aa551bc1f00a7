// The elements raised at the stations of a pattern.

import type { Piece } from "../../core/index";
import { unionOf } from "../view/contour";
import type { PathItem } from "../display";
import type { Metrics } from "../metrics";
import { type Place, onSheet } from "../place";
import { stroke } from "../strokes";
import { stepFor } from "../thinning";

/**
 * A thin line for each kept stretch of each station's element, raised from the stretch-out line; extra stations dashed. At the seam
 * the outline itself is drawn. Where lines would run into one grey, every second, third, … is drawn.
 */
export function stationLines(piece: Piece, place: Place, metrics: Metrics): PathItem[] {
  const count = piece.stations.filter(({ mark }) => mark === "even").length;
  const step = stepFor((piece.pattern.girth * place.scale) / count, metrics.gap);
  return piece.stations.flatMap(({ label, girth, mark, before, after }, station) => {
    if (station === 0 || mark === "closing" || (mark === "even" && Number(label) % step !== 0)) return [];
    const kept = unionOf([...before, ...after]);
    return kept.map(({ from, to }, i) => ({ from: i === 0 ? 0 : from, to })).map(({ from, to }) => stroke(
      mark === "even" ? "station" : "extra station",
      onSheet(place, { x: girth, y: from }), onSheet(place, { x: girth, y: to }), { clause: "stations", station },
    ));
  });
}
