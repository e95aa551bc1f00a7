import { closePanel } from "../../screen/panel";
import { useFormat } from "../../quantity/useFormat";
import { listWords as said } from "../../words/markingList";
import { useSheets } from "../sheets";
import { removeRow, type ListRow } from "./markingList";
import { likelyWords, verdictWords } from "./resultWords";
import type { StudentResult } from "./studentResult";
import { takeStudent } from "./takeStudent";

/** One line a student; the name takes their sheet in hand. */
export function ListTable({ rows, results }: { rows: readonly ListRow[]; results: ReadonlyMap<string, StudentResult> }) {
  const inHand = useSheets(({ student }) => student?.id);
  return (
    <div className="marking-list" tabIndex={0} role="group" aria-label={said.title}>
      <table>
        <thead>
          <tr>
            {Object.values<string>(said.heads).map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
            <td />
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => <StudentRow key={row.id} row={row} result={results.get(row.id)} inHand={row.id === inHand} />)}
        </tbody>
      </table>
    </div>
  );
}

function StudentRow({ row, result, inHand }: { row: ListRow; result: StudentResult | undefined; inHand: boolean }) {
  const format = useFormat();
  const name = row.name || said.nobody;
  const take = async () => {
    if (await takeStudent(row)) closePanel();
  };
  const verdict = result?.ok ? result.check.verdict : null;
  const count = (value: number) => format.figure(value, "count");
  return (
    <tr aria-current={inHand || undefined}>
      <th scope="row">
        <button type="button" className="verb" onClick={() => void take()}>
          {name}
        </button>
      </th>
      <td>{row.code}</td>
      <td className={result && !result.ok ? "out" : undefined}>{result && verdictWords(result)}</td>
      <td>{verdict && `${format.length(verdict.largest)} ${format.unit}`}</td>
      <td>{result?.ok && result.marks.of > 0 && said.marksOf(count(result.marks.sum), count(result.marks.of))}</td>
      <td className="likely">{result && likelyWords(result, format)}</td>
      <td>
        <button type="button" className="verb" aria-label={said.remove(name)} onClick={() => removeRow(row.id)}>
          {said.removeWord}
        </button>
      </td>
    </tr>
  );
}
