import type { Piece } from "../../core/index";
import { useSettings } from "../store/settings";
import { useAdequacy } from "./useAdequacy";

/** Height of the tallest bar; a tolerance that is kept stands at under half of it. */
const most = 22;
const leastScale = 5;

interface Props {
  readonly piece: Piece;
  readonly first: number;
  readonly last: number;
  readonly base: number;
}

/** How far a smooth curve strays between stations: bars standing on the rod, filled where they pass the tolerance. */
export function GaugeBars({ piece, first, last, base }: Props) {
  const tolerance = useSettings((settings) => settings.tolerance);
  const adequacy = useAdequacy(piece, tolerance);
  const perMm = (last - first) / piece.form.girth;
  // Square-root scale: a small stray is still seen beside a large one.
  const top = Math.max(tolerance * leastScale, ...adequacy.perSpan.map((span) => span.deviation).filter(Number.isFinite));
  const rise = (deviation: number) => most * Math.sqrt(Math.min(1, deviation / top));
  return (
    <g className="gauge">
      {adequacy.perSpan.map(({ from, to, deviation }, i) => {
        const height = rise(deviation);
        if (!(height >= 0.75)) return null;
        const left = first + from * perMm;
        const width = Math.max(1, (to - from) * perMm - 4);
        return <rect key={i} className={deviation > tolerance ? "over" : "under"} x={left + 2} y={base - height} width={width} height={height} />;
      })}
      <line x1={first} x2={last} y1={base - rise(tolerance)} y2={base - rise(tolerance)} />
    </g>
  );
}
