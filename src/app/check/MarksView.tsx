import { useState } from "react";
import { marks, type Diagnosis, type ItemMarks, type MarkingItem } from "../../core/index";
import { SchemeEditor } from "../marking/SchemeEditor";
import { useFormat } from "../quantity/useFormat";
import { checkWords } from "../words/check";
import { markingWords } from "../words/marking";
import { eyeMarks, marksByEye, oddMarks } from "./marksByEye";
import type { Sheet } from "./sheet";
import { changeSheet } from "./sheets";
import { TextField } from "./TextField";
import type { Check } from "./useCheck";

/** What this drawing earns by the teacher's scheme: what readings decide, and a field for the teacher's eye, which overrules them. */
export function MarksView({ check, diagnosis }: { check: Check; diagnosis: Diagnosis | null }) {
  const format = useFormat();
  const { items } = check.job.marking;
  const [changing, setChanging] = useState(false);
  const earned = marks(items, { judged: check.verdict?.judged ?? [], diagnosis, eye: marksByEye(check.sheet) });
  const odd = oddMarks(check.sheet, items).length;
  const count = (value: number) => format.figure(value, "count");
  return (
    <fieldset>
      <legend>{checkWords.marks}</legend>
      {earned.items.map((one) => <ItemRow key={one.item.id} one={one} sheet={check.sheet} />)}
      {items.length > 0 && (
        <p className="found" role="status">
          {checkWords.marked(count(earned.sum), count(earned.of))} {earned.of < earned.full && checkWords.open(count(earned.full - earned.of))}{" "}
          {odd > 0 && checkWords.oddMarks(odd)}
        </p>
      )}
      <p className="check-verbs">
        <button type="button" className="verb" aria-expanded={changing} onClick={() => setChanging(!changing)}>
          {items.length === 0 ? checkWords.setScheme : checkWords.changeScheme}
        </button>
      </p>
      {changing && <SchemeEditor />}
    </fieldset>
  );
}

function ItemRow({ one: { item, given, read: judged, outside }, sheet }: { one: ItemMarks; sheet: Sheet }) {
  const format = useFormat();
  const read = eyeMarks(sheet, item);
  const name = item.text || markingWords.untitled;
  return (
    <label className="setting item-marks">
      <span>{name}</span>
      <span className="field">
        <TextField
          label={checkWords.marksOf(name)} text={sheet.marks[item.id] ?? ""} quantity="count" help="marks" hint={given === null ? "" : format.figure(given, "count")}
          fault={read?.ok === false ? read.fault : undefined}
          change={(typed) => changeSheet((now) => ({ ...now, marks: { ...now.marks, [item.id]: typed } }))}
        />
        <span className="marks-of">{markWords(item, format.figure(Math.abs(item.marks), "count"))}</span>
      </span>
      {judged > 0 && <span className="unseen">{checkWords.rightOf(judged - outside, judged)}</span>}
    </label>
  );
}

function markWords({ marks: full }: MarkingItem, size: string): string {
  return full < 0 ? checkWords.offEach(size) : checkWords.of(size);
}
