import { useMemo, useState, type ClipboardEvent, type KeyboardEvent } from "react";
import type { JudgedReading, ReadingPlace } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { useFormat } from "../quantity/useFormat";
import { hold } from "../store/store";
import { checkWords } from "../words/check";
import { pasted } from "./pasted";
import { placeKey } from "./places";
import { changeSheet } from "./sheets";
import { TextField } from "./TextField";
import type { Check } from "./useCheck";

/** The readings, one field each, with what each is off by. Enter and the arrows go on and back; a column may be pasted. */
export function ReadingsTable({ check }: { check: Check }) {
  const { sheet, faults, verdict } = check;
  const format = useFormat();
  const [surplus, setSurplus] = useState<readonly string[]>([]);
  const judged = useMemo(() => new Map(verdict?.judged.map((one) => [placeKey(one.reading), one])), [verdict]);
  const blocks = useMemo(() => blocksOf(check, format.trade), [check, format]);
  const grid = blocks.flatMap(({ rows }) => rows.map(({ cells }) => cells.map(placeKey)));

  const write = (texts: Readonly<Record<string, string>>) => changeSheet((now) => ({ ...now, readings: { ...now.readings, ...texts } }));
  const onPaste = (event: ClipboardEvent<HTMLInputElement>, key: string) => {
    const laid = pasted(event.clipboardData.getData("text"), grid, key);
    setSurplus(laid?.surplus ?? []);
    if (!laid) return;
    event.preventDefault();
    write(laid.texts);
  };
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
      {surplus.length > 0 && <p className="fault" role="alert">{checkWords.surplus(surplus)}</p>}
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

interface Block {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly ReadingPlace[]; readonly station: number | null }[];
}

function blocksOf({ places, job }: Check, trade: TradeWords): Block[] {
  const { angles } = places;
  const cutNumber = (cut: string) => job.part.cuts.findIndex(({ id }) => id === cut) + 1;
  const sizes: Block = { title: checkWords.place, heads: [checkWords.read], rows: [
    { name: checkWords.stretchOut(trade), cells: [{ line: "stretchOut" }], station: null },
    { name: checkWords.spacing, cells: [{ line: "spacing" }], station: null },
    ...angles.map((cut) => ({ name: checkWords.angleOf(cutNumber(cut), angles.length > 1), cells: [{ line: "angle" as const, cut }], station: null })),
  ] };
  return [sizes, ...places.blocks.map(({ lines, rows }) => ({
    title: lines[0] === "lower" ? checkWords.opening : "", heads: lines.map((line) => checkWords.heads[line]),
    rows: rows.map(({ label, at, station }) => ({ name: checkWords.station(label, label === "0" && at > 0), cells: lines.map((line) => ({ line, at })), station })),
  }))];
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
