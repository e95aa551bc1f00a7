import { useMemo } from "react";
import type { Piece } from "../../../core/index";
import { growBox } from "../../../drawing/box";
import { boundsOf } from "../../../drawing/bounds";
import { gapDetail } from "../../../drawing/compared/gapDetail";
import { viewBox } from "../../../output/svg/viewBox";
import { stationAdded } from "../../describe/stations";
import type { Format } from "../../quantity/format";
import { smallLength } from "../../quantity/smallLength";
import { useFormat } from "../../quantity/useFormat";
import { directionOf } from "../../rod/rows";
import { selectPiece } from "../../store/select";
import { useSettings } from "../../store/settings";
import { change } from "../../store/changes";
import { useApp } from "../../store/store";
import "../../theme/smooth.css";
import { boardWords } from "../../words/board";
import { ItemView } from "../ItemView";
import { straysOf, type Stray } from "./strays";

/** Both ends: the greatest gap between smooth curve and true edge enlarged, and what would mend it. `px`: CSS pixels a sheet mm. */
export function SmoothDetails({ px }: { px: number }) {
  const piece = useApp(selectPiece);
  const tolerance = useSettings((settings) => settings.tolerance);
  const format = useFormat();
  if (!piece) return null;
  return (
    <section className="smooth-details" aria-label={boardWords.smoothTitle}>
      {straysOf(piece, tolerance).map((stray) => (
        <Detail key={stray.end} piece={piece} stray={stray} tolerance={tolerance} format={format} px={px} />
      ))}
      <p className="smooth-legend">{boardWords.smoothLegend}</p>
    </section>
  );
}

interface Props {
  readonly piece: Piece;
  readonly stray: Stray;
  readonly tolerance: number;
  readonly format: Format;
  readonly px: number;
}

function Detail({ piece, stray: { end, letter, adequacy, gap }, tolerance, format, px }: Props) {
  const name = boardWords.ends[end][piece.form.attitude];
  const by = smallLength(adequacy.deviation, format);
  const angle = directionOf((adequacy.oneExtra ?? adequacy.at).theta);
  const { enough } = adequacy;
  const figure = smallLength(adequacy.deviation, format, false);
  const drawn = useMemo(() => gap && gapDetail(piece, end, gap, { figure, title: (scale) => boardWords.scale(letter, scale) }), [piece, end, gap, figure, letter]);
  const useEnough = enough !== null && adequacy.deviation > tolerance && (
    <button type="button" className="verb" onClick={() => change((job) => ({ ...job, development: { ...job.development, stations: enough } }), boardWords.useStations(enough))}>
      {boardWords.useStations(enough)}
    </button>
  );
  if (!drawn) {
    return (
      <div>
        <p>{adequacy.deviation === Infinity ? boardWords.noCurve(name) : boardWords.follows(name)}</p>
        {useEnough}
      </div>
    );
  }
  const box = growBox(boundsOf(drawn.items), 1);
  return (
    <figure className="smooth-detail">
      <svg viewBox={viewBox(box)} width={(box.right - box.left) * px} height={(box.top - box.bottom) * px} aria-hidden="true">
        {drawn.items.map((item, i) => (
          <ItemView key={i} item={item} />
        ))}
      </svg>
      <figcaption>
        <p>{boardWords.strays(name, by, format.angle(directionOf(adequacy.at.theta)))}</p>
        {adequacy.deviation <= tolerance && <p>{boardWords.within(smallLength(tolerance, format))}</p>}
        <button type="button" className="verb" onClick={() => change((job) => stationAdded(job, Number(angle.toFixed(2))), boardWords.added(format.angle(angle)))}>
          {boardWords.addStation}
        </button>
        {useEnough}
      </figcaption>
    </figure>
  );
}
