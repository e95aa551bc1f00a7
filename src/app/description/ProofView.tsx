import type { Piece } from "../../core/index";
import { useUnhurried } from "../board/useUnhurried";
import { useFormat } from "../quantity/useFormat";
import { useAdequacy } from "../rod/useAdequacy";
import { selectPiece } from "../store/select";
import { useSettings } from "../store/settings";
import "../theme/proof.css";
import { measuredWords } from "../words/measured";

/** What was measured on the flat pattern against the pipe in space, folded until it is wanted. */
export function ProofView() {
  const piece = useUnhurried(selectPiece);
  return piece ? <ProofOf piece={piece} /> : null;
}

function ProofOf({ piece }: { piece: Piece }) {
  const format = useFormat();
  const tolerance = useSettings((settings) => settings.tolerance);
  const { chordLoss, chordLossRatio } = useAdequacy(piece, tolerance);
  const { proof } = piece.pattern;
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  const { proof: said } = measuredWords;
  const rows = [
    [said.girth(format.trade), length(proof.girth)],
    [said.chords, said.short(length(chordLoss), (100 * chordLossRatio).toFixed(2))],
    [said.area, said.within(format.area(proof.areaFlat), `${within(proof.areaFlat - proof.areaSurface)} mm²`)],
    [said.edges, said.within(length(proof.edgeLengthFlat), `${within(proof.edgeLengthFlat - proof.edgeLengthSurface)} mm`)],
    [said.closing, `${within(proof.closingError)} mm`],
    [said.rollBack, `${within(proof.rollBackError)} mm`],
  ] as const;
  return (
    <details className="proof">
      <summary>{said.title(format.trade)}</summary>
      <dl>
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** A bound on a small difference: rounded up to thousandths, and never claimed finer than one. */
function within(difference: number): string {
  return Math.max(0.001, Math.ceil(Math.abs(difference) * 1000) / 1000).toFixed(3);
}
