import { useFormat } from "../quantity/useFormat";
import { selectPiece } from "../store/select";
import { useApp } from "../store/store";
import { words } from "../words/interface";

/** What was measured on the flat pattern against the pipe in space. */
export function ProofView() {
  const piece = useApp(selectPiece);
  const format = useFormat();
  if (!piece) return null;
  const { proof } = piece.pattern;
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  return (
    <dl className="proof" aria-label={words.proof.title}>
      <dt>{words.proof.girth}</dt>
      <dd>{length(proof.girth)}</dd>
      <dt>{words.proof.area}</dt>
      <dd>
        {format.area(proof.areaFlat)}, {words.proof.against(within(proof.areaFlat - proof.areaSurface, "mm²"))}
      </dd>
      <dt>{words.proof.edges}</dt>
      <dd>
        {length(proof.edgeLengthFlat)}, {words.proof.against(within(proof.edgeLengthFlat - proof.edgeLengthSurface, "mm"))}
      </dd>
      <dt>{words.proof.closing}</dt>
      <dd>{within(proof.closingError, "mm")}</dd>
      <dt>{words.proof.rollBack}</dt>
      <dd>{within(proof.rollBackError, "mm")}</dd>
    </dl>
  );
}

/** A bound on a small difference: rounded up to thousandths, and never claimed finer than one. */
function within(difference: number, unit: string): string {
  return `${Math.max(0.001, Math.ceil(Math.abs(difference) * 1000) / 1000).toFixed(3)} ${unit}`;
}
