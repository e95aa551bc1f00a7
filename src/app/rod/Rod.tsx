import { useMemo, useRef } from "react";
import { useFormat } from "../quantity/useFormat";
import { useSize } from "../screen/useSize";
import { useGirthInHand } from "../store/between";
import { selectPiece, selectStation } from "../store/select";
import { useSettings } from "../store/settings";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { AdequacyLine } from "./AdequacyLine";
import { rodLayout } from "./layout";
import { betweenText, Readout, readoutText } from "./Readout";
import { RodScale } from "./RodScale";
import { rodRows } from "./rows";
import { StationTable } from "./StationTable";
import { TableVerbs } from "./TableVerbs";
import { useAdequacy } from "./useAdequacy";

/** Before its size is known the rod is laid out for a window of this width. */
const assumedWidth = 1024;

/** The girth laid flat as a rod: scrubber, gauge, and under each station its figures. */
export function Rod() {
  const piece = useApp(selectPiece);
  return piece ? <RodOf piece={piece} /> : null;
}

function RodOf({ piece }: { piece: NonNullable<ReturnType<typeof selectPiece>> }) {
  const scale = useRef<HTMLDivElement>(null);
  const width = useSize(scale)?.width || assumedWidth;
  const format = useFormat();
  const tolerance = useSettings((settings) => settings.tolerance);
  const adequacy = useAdequacy(piece, tolerance);
  const rows = useMemo(() => rodRows(piece, format), [piece, format]);
  const longest = useMemo(() => Math.max(...rows.flatMap((row) => row.cells.map((cell) => cell.length))), [rows]);
  const layout = useMemo(() => rodLayout(piece, width, longest), [piece, width, longest]);
  const station = useApp(selectStation);
  const girth = useGirthInHand();
  return (
    <section className="rod" aria-label={words.rod}>
      <div className="rod-hand">
        <Readout piece={piece} format={format} />
        <RodScale box={scale} piece={piece} layout={layout} width={width} adequacy={adequacy} tolerance={tolerance} valueText={girth === null ? readoutText(piece, station, format) : betweenText(piece, girth, format)} />
      </div>
      <AdequacyLine adequacy={adequacy} piece={piece} format={format} />
      <TableVerbs piece={piece} rows={rows} />
      <StationTable piece={piece} rows={rows} layout={layout} />
    </section>
  );
}
