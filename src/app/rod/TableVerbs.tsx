import { useState } from "react";
import type { Piece } from "../../core/index";
import { TRADE } from "../../drawing/tradeWords";
import { saveText } from "../files/saveText";
import { fileName } from "../files/fileName";
import { selectJob } from "../store/select";
import { useSettings } from "../store/settings";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { measuredWords } from "../words/measured";
import type { RodRow } from "./rows";

interface Props {
  readonly piece: Piece;
  readonly rows: readonly RodRow[];
}

/** Copies the table as it stands, to be pasted into a spreadsheet, or saves it as CSV. */
export function TableVerbs({ piece, rows }: Props) {
  const title = useApp((state) => selectJob(state).title);
  const comma = useSettings((settings) => settings.comma);
  const places = useSettings((settings) => settings.places);
  const trade = useSettings((settings) => settings.words);
  const [said, setSaid] = useState("");
  const copy = () => {
    navigator.clipboard.writeText(tabbed(piece, rows)).then(
      () => setSaid(measuredWords.copied),
      () => setSaid(measuredWords.copyFailed),
    );
  };
  const save = async () => {
    const [{ stationCsv }, { csvWords }] = await Promise.all([import("../../output/csv/stationCsv"), import("../../output/csv/csvWords")]);
    saveText(fileName(title, "csv"), "text/csv", stationCsv(piece, { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places, words: csvWords(TRADE[trade]) }));
  };
  return (
    <p>
      <span role="status">{said}</span>
      <button type="button" className="verb" onClick={copy}>
        {measuredWords.copy}
      </button>
      <button type="button" className="verb" onClick={() => void save()}>
        {measuredWords.csv}
      </button>
    </p>
  );
}

/** One line a station, tabs between the figures. */
function tabbed(piece: Piece, rows: readonly RodRow[]): string {
  const head = [words.table.station, ...rows.map((row) => row.name)];
  const lines = piece.stations.map((station, i) => [station.label, ...rows.map((row) => row.cells[i] ?? "")]);
  return [head, ...lines].map((line) => line.join("\t")).join("\n");
}
