import { useFormat } from "../../quantity/useFormat";
import { sheetsWords as said } from "../../words/sheets";
import { chooseSheets, useSheets } from "./sheetChoices";

/** Longest task, letters. */
const longest = 1500;

/** The words on the sheets: the description of the piece, which follows the job, and what is to be done, as the teacher writes it. */
export function SheetText() {
  const { trade } = useFormat();
  const { described, task } = useSheets();
  return (
    <fieldset className="sheet-text">
      <legend>{said.text}</legend>
      <label>
        <input type="checkbox" checked={described} onChange={(event) => chooseSheets({ described: event.target.checked })} />
        {said.described}
      </label>
      <textarea aria-label={said.task} rows={4} maxLength={longest} value={task ?? said.usualTask(trade)} onChange={(event) => chooseSheets({ task: event.target.value })} />
      {task !== null && (
        <button type="button" className="verb" onClick={() => chooseSheets({ task: null })}>
          {said.usualWords}
        </button>
      )}
    </fieldset>
  );
}
