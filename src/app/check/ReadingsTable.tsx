import { useMemo, type KeyboardEvent } from "react";
import type { JudgedReading, ReadingPlace } from "../../core/index";
import { useFormat } from "../quantity/useFormat";
import { hold } from "../store/store";
import { checkWords } from "../words/check";
import type { GridRow } from "./namedRows";
import { PasteNote } from "./PasteNote";
import { usePaste } from "./usePaste";
import { placeKey } from "./places";
import { readingBlocks } from "./readingBlocks";
import { changeSheet } from "./sheets";
import { TextField } from "./TextField";
import type { Check } from "./useCheck";

/** The readings, one field each, with what each is off by. Enter and the arrows go on and back; a column may be pasted. */
export function ReadingsTable({ check }: { check: Check }) {
  const { sheet, faults, verdict } = check;
  const format = useFormat();
  const judged = useMemo(() => new Map(verdict?.judged.map((one) => [placeKey(one.reading), one])), [verdict]);
  const blocks = useMemo(() => readingBlocks(check, format.trade), [check, format]);
  const rows = useMemo(() => blocks.map((block) => block.rows.map(({ cells, names }): GridRow => ({ keys: cells.map(placeKey), names }))), [blocks]);
  const grid = rows.flat().map(({ keys }) => keys);
  const { laid, onPaste, again, takeBack } = usePaste(rows, sheet.readings);

  const write = (texts: Readonly<Record<string, string>>) => changeSheet((now) => ({ ...now, readings: { ...now.readings, ...texts } }));
  const field = (place: ReadingPlace, label: string) => {
    const key = placeKey(place);
    return (
      <TextField
        label={label} text={sheet.readings[key] ?? ""} quantity={place.line === "angle" ? "angle" : "length"} fault={faults[key]} name={key} help={place.line}
        change={(text) => write({ [key]: text })} onKeyDown={(event) => move(event, grid, key)} onPaste={(event) => onPaste(event, key)}
      />
    );
  };

  return (
    <>
      {laid && <PasteNote laid={laid} again={again} takeBack={takeBack} />}
      <table className="readings">
        <caption>{checkWords.readings(format.unit)}</caption>
        <colgroup>
          <col className="where" />
          <col span={2} />
          <col className="by" />
        </colgroup>
        {blocks.map(({ title, heads, rows }, k) => (
          <tbody key={k}>
            <tr>
              <th scope="col">{title}</th>
              {heads.map((head) => <th key={head} scope="col" colSpan={3 - heads.length}>{head}</th>)}
              <th scope="col" className="off">{k === 0 ? checkWords.off : ""}</th>
            </tr>
            {rows.map(({ name, cells, station }, i) => (
              <tr key={i} onFocus={() => station !== null && hold(station)}>
                <th scope="row">{name}</th>
                {cells.map((place, column) => (
                  <td key={placeKey(place)} colSpan={3 - cells.length}>
                    {field(place, cells.length > 1 ? `${name}, ${heads[column] ?? ""}` : name)}
                  </td>
                ))}
                <td className="off">{cells.map((place) => <OffBy key={placeKey(place)} one={judged.get(placeKey(place))} />)}</td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </>
  );
}

/** What a reading is off by, heavy when that is more than is allowed. */
function OffBy({ one }: { one: JudgedReading | undefined }) {
  const format = useFormat();
  if (!one) return null;
  if (one.deviation === null) return <strong>{checkWords.nothingThere}</strong>;
  const size = Math.abs(one.deviation);
  const figure = one.reading.line === "angle" ? format.angle(size) : format.length(size);
  const sign = /[1-9]/.test(figure) ? (one.deviation < 0 ? "−" : "+") : "";
  const text = `${sign}${figure} `;
  return one.within ? <span>{text}</span> : <strong title={checkWords.out}>{text}<span className="unseen">{checkWords.out}</span></strong>;
}

/** Enter and the arrow keys go to the field below or above, of the same column where there is one. */
function move(event: KeyboardEvent<HTMLInputElement>, grid: readonly (readonly string[])[], key: string): void {
  const by = event.key === "Enter" || event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (by === 0) return;
  event.preventDefault();
  const row = grid.findIndex((keys) => keys.includes(key));
  const next = grid[row + by];
  const target = next?.[Math.min(next.length - 1, grid[row]?.indexOf(key) ?? 0)];
  event.currentTarget.closest("table")?.querySelector<HTMLInputElement>(`input[data-reading="${target}"]`)?.focus();
}
