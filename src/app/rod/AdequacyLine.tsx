import type { Adequacy, Piece } from "../../core/index";
import { stationAdded } from "../describe/stations";
import type { Format } from "../quantity/format";
import { smallLength } from "../quantity/smallLength";
import { set, tolerances, useSettings } from "../store/settings";
import { changing } from "../store/changing";
import { measuredWords } from "../words/measured";
import { verbWords } from "../words/verbs";
import { directionOf } from "./rows";
import { useAdequacy } from "./useAdequacy";

/** One more station is offered when it leaves less than this share of the stray. */
const worthwhile = 0.75;

interface Props {
  readonly piece: Piece;
  readonly format: Format;
}

/** In words: how far a smooth curve through the stations strays, and what would bring it under the tolerance. */
export function AdequacyLine({ piece, format }: Props) {
  const tolerance = useSettings((settings) => settings.tolerance);
  const adequacy = useAdequacy(piece, tolerance);
  const [before, after] = sentence(adequacy, piece, tolerance, format);
  const { oneExtra } = adequacy;
  const offer = oneExtra && adequacy.deviation > tolerance && oneExtra.deviation < worthwhile * adequacy.deviation ? oneExtra : null;
  const angle = offer ? directionOf(offer.theta) : 0;
  return (
    <p>
      {measuredWords.adequacy.curve}
      {before}
      <select
        className="choice"
        aria-label={measuredWords.adequacy.tolerance}
        value={tolerance}
        onChange={(event) => set("tolerance", tolerances.find((one) => String(one) === event.target.value) ?? tolerance)}
      >
        {tolerances.map((one) => (
          <option key={one} value={one}>
            {smallLength(one, format)}
          </option>
        ))}
      </select>
      {after}
      {offer && (
        <>
          {measuredWords.adequacy.oneExtra(format.angle(angle), smallLength(offer.deviation, format))}{" "}
          <button type="button" className="verb" onClick={() => changing((by) => by.change((job) => stationAdded(job, Number(angle.toFixed(2))), verbWords.addStation))}>
            {measuredWords.adequacy.add}
          </button>
        </>
      )}
    </p>
  );
}

function sentence(adequacy: Adequacy, piece: Piece, tolerance: number, format: Format): readonly [string, string] {
  const { deviation, at, enough } = adequacy;
  // Under a thousandth of a millimetre nobody marks out; there the curve is the edge.
  if (deviation < 0.001) return measuredWords.adequacy.exact;
  if (deviation === Infinity) return measuredWords.adequacy.noCurve(measuredWords.adequacy.stations(enough));
  const by = smallLength(deviation, format);
  const near = nearest(piece, at.girth);
  if (deviation <= tolerance) return measuredWords.adequacy.good(by, near);
  return enough === null ? measuredWords.adequacy.noCount(by, near) : measuredWords.adequacy.enough(by, near, enough);
}

function nearest(piece: Piece, girth: number): string {
  const byDistance = [...piece.stations].sort((a, b) => Math.abs(a.girth - girth) - Math.abs(b.girth - girth));
  return byDistance[0]?.label ?? "";
}
