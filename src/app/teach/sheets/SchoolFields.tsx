import { sheetsWords as said } from "../../words/sheets";
import { chooseSheets, useSheets } from "./sheetChoices";

const fields = ["school", "className", "date"] as const;

/** Longest text of a field, letters. */
const longest = 80;

/** What the school's block says; a field left empty is filled in by hand. */
export function SchoolFields() {
  const choices = useSheets();
  return (
    <fieldset className="school-block">
      <legend>{said.block}</legend>
      {fields.map((field) => (
        <label key={field}>
          <span>{said[field]}</span>
          <input value={choices[field]} maxLength={longest} placeholder={said.blank} autoComplete="off" onChange={(event) => chooseSheets({ [field]: event.target.value })} />
        </label>
      ))}
      <p className="sheets-lead">{said.marksFrom}</p>
    </fieldset>
  );
}
