import type { Piece } from "../../core/index";
import type { Format } from "../quantity/format";
import { selectStation } from "../store/select";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { directionOf } from "./rows";

/** The figures of the station in hand as one line; what can be done when none is. */
export function Readout({ piece, format }: { piece: Piece; format: Format }) {
  const station = useApp(selectStation);
  return (
    <p className="readout" aria-live="polite">
      {readoutText(piece, station, format)}
    </p>
  );
}

/** "Station 4 · 120° from the front · girth 94.25 · true length 188.49, 0 to 188.49" */
export function readoutText(piece: Piece, index: number | null, format: Format): string {
  const station = index === null ? undefined : piece.stations[index];
  const { readout } = words;
  if (!station) return words.rodHelp;
  const { bottom, top } = station;
  const length =
    bottom === null || top === null ? readout.none : `${readout.length(format.length(station.length))}, ${readout.from(format.length(bottom), format.length(top))}`;
  return [readout.station(station.label), readout.angle(format.angle(directionOf(station.theta))), readout.girth(format.length(station.girth)), length].join(" · ");
}
