import { useDeferredValue, useMemo, useRef } from "react";
import { useUnhurried } from "../board/useUnhurried";
import { useFormat } from "../quantity/useFormat";
import { afterTouch } from "../screen/later";
import { useSize } from "../screen/useSize";
import { useGirthInHand } from "../store/between";
import { selectPiece, selectStation } from "../store/select";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { rodLayout } from "./layout";
import { betweenText, Readout, readoutText } from "./Readout";
import { RodScale } from "./RodScale";
import { rodRows } from "./rows";
import { StationTable } from "./StationTable";

const AdequacyLine = afterTouch(async () => (await import("./AdequacyLine")).AdequacyLine);
const TableVerbs = afterTouch(async () => (await import("./TableVerbs")).TableVerbs);

/** Before its size is known the rod is laid out for a window of this width. */
const assumedWidth = 1024;

/** The girth laid flat as a rod: scrubber, gauge, and under each station its figures. */
export function Rod() {
  const piece = useUnhurried(selectPiece);
  return piece ? <RodOf piece={piece} /> : null;
}

function RodOf({ piece }: { piece: NonNullable<ReturnType<typeof selectPiece>> }) {
  const scale = useRef<HTMLDivElement>(null);
  const width = useSize(scale)?.width || assumedWidth;
  const format = useFormat();
  const rows = useMemo(() => rodRows(piece, format), [piece, format]);
  const longest = useMemo(() => Math.max(...rows.flatMap((row) => row.cells.map((cell) => cell.length))), [rows]);
  const layout = useMemo(() => rodLayout(piece, width, longest), [piece, width, longest]);
  // The rod goes before, the table follows in the time that is left.
  const table = useDeferredValue(useMemo(() => ({ piece, rows, layout }), [piece, rows, layout]));
  const station = useApp(selectStation);
  const girth = useGirthInHand();
  return (
    <section className="rod" aria-label={words.rod(format.trade)}>
      <div className="rod-hand">
        <Readout piece={piece} format={format} />
        <RodScale box={scale} piece={piece} layout={layout} width={width} name={words.rod(format.trade)} valueText={girth === null ? readoutText(piece, station, format) : betweenText(piece, girth, format)} />
      </div>
      <div className="adequacy">
        <AdequacyLine piece={piece} format={format} />
      </div>
      <div className="table-verbs">
        <TableVerbs piece={piece} rows={rows} />
      </div>
      <StationTable {...table} />
    </section>
  );
}
