import type { TradeWords } from "../../drawing/tradeWords";
import { placeKey } from "../check/places";
import type { Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { SettingField } from "../settings/SettingField";
import { checkWords } from "../words/check";
import { photoWords } from "../words/photo";
import { useLaid } from "./laid";
import { goToRow, linesOf, rowsRead, useReadingOff } from "./readingOff";
import { rowOfKey, stationName } from "./stationName";
import { takeBack, takeReading } from "./takeReading";

/** How the picture on the board is seen and read, whose turn it is, and what happened last. */
export function ReadingFields({ check, trade }: { check: Check; trade: TradeWords }) {
  const opacity = useLaid((state) => state.opacity);
  const { line: wanted, way, typed, turn, taken } = useReadingOff();
  const lines = linesOf(check.places);
  const { line, rows } = rowsRead(check.places, wanted);
  const row = rows[turn];
  const unread = rows.filter(({ at }) => (check.sheet.readings[placeKey({ line, at })] ?? "").trim() === "").map(stationName);
  const next = row ? photoWords.turn(stationName(row), trade) : photoWords.done(unread);
  return (
    <>
      <label className="setting">
        <span>{photoWords.opacity}</span>
        <input type="range" min="0" max="100" step="5" value={Math.round(opacity * 100)} onChange={(event) => useLaid.setState({ opacity: Number(event.target.value) / 100 })} />
      </label>
      {lines.length > 1 && <SettingField label={photoWords.edge} value={line} options={Object.fromEntries(lines.map((one) => [one, checkWords.lines[one]]))} choose={(value) => useReadingOff.setState({ line: lines.find((one) => one === value) ?? null, turn: 0, pressed: null })} />}
      <SettingField label={photoWords.way} value={way} options={photoWords.ways} choose={(value) => useReadingOff.setState({ way: value === "trace" ? "trace" : "press" })} />
      <SettingField label={photoWords.typed} value={typed} options={photoWords.typeds} choose={(value) => useReadingOff.setState({ typed: value === "replaced" ? "replaced" : "kept" })} />
      <p className="photo-turn" role="status">{way === "trace" ? photoWords.trace : next}</p>
      <p className="check-verbs">
        <button type="button" className="verb" disabled={turn <= 0} onClick={() => goToRow(Math.min(turn, rows.length) - 1, rows)}>{photoWords.back}</button>
        <button type="button" className="verb" disabled={turn >= rows.length - 1} onClick={() => goToRow(turn + 1, rows)}>{photoWords.skip}</button>
        <button type="button" className="verb" disabled={taken.length === 0} onClick={() => sayTakenBack(check, trade)}>{photoWords.takeBack}</button>
      </p>
      <SaidWords check={check} />
    </>
  );
}

function SaidWords({ check }: { check: Check }) {
  const said = useReadingOff((state) => state.said);
  const { unit } = useFormat();
  if (!said) return null;
  if (said.kind === "traced") return <p className="found" role="status">{said.count + said.kept === 0 ? photoWords.nothingTraced : photoWords.traced(said.count, said.kept)}</p>;
  if (said.kind === "back") return <p className="found" role="status">{photoWords.takenBack(said.label)}</p>;
  if (said.kind === "taken") return <p className="found" role="status">{photoWords.taken(said.label, `${said.text} ${unit}`)}</p>;
  const replace = () => {
    takeReading(check, said.key, said.text);
    useReadingOff.setState({ said: { ...said, kind: "taken" } });
  };
  return (
    <p className="found" role="status">
      {photoWords.typedThere(said.label, said.typed, said.text)}{" "}
      <button type="button" className="verb" onClick={replace}>{photoWords.replace}</button>
    </p>
  );
}

function sayTakenBack(check: Check, trade: TradeWords): void {
  const key = takeBack();
  if (key === null) return;
  const found = rowOfKey(check, key);
  useReadingOff.setState({ said: { kind: "back", label: found ? stationName(found.row) : checkWords.stretchOut(trade) }, pressed: null, ...(found ? { turn: found.index } : {}) });
}
