import { elementAt, type Piece, type RuledElement } from "../../core/index";
import type { Format } from "../quantity/format";
import { useGirthInHand } from "../store/between";
import { selectStation } from "../store/select";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { directionOf } from "./rows";

/** The figures of the station in hand, or of the place between stations, as one line; what can be done when none is. */
export function Readout({ piece, format }: { piece: Piece; format: Format }) {
  const station = useApp(selectStation);
  const girth = useGirthInHand();
  return (
    <p className="readout" aria-live="polite">
      {girth === null ? readoutText(piece, station, format) : betweenText(piece, girth, format)}
    </p>
  );
}

/** "Station 4 · 120° from the front · girth 94.25 · true length 188.49, 0 to 188.49" */
export function readoutText(piece: Piece, index: number | null, format: Format): string {
  const station = index === null ? undefined : piece.stations[index];
  return station ? elementText(words.readout.station(station.label), station, format) : words.rodHelp(format.unit);
}

/** "Between 4 and 5 · 125.3° from the front · …" */
export function betweenText(piece: Piece, girth: number, format: Format): string {
  const before = piece.stations.findLast((station) => station.girth <= girth);
  const after = piece.stations.find((station) => station.girth >= girth);
  const name = before && after && before !== after ? words.readout.between(before.label, after.label) : words.readout.station((before ?? after)?.label ?? "");
  return elementText(name, elementAt(piece, girth), format);
}

function elementText(name: string, { theta, girth, bottom, top, length }: RuledElement, format: Format): string {
  const { readout } = words;
  const kept = bottom === null || top === null ? readout.none : `${readout.length(format.length(length))}, ${readout.from(format.length(bottom), format.length(top), format.unit)}`;
  return [name, readout.angle(format.angle(directionOf(theta))), readout.girth(format.length(girth), format.trade), kept].join(" · ");
}
