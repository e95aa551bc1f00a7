import { parseQuantity } from "../../core/index";
import { useFormat } from "../quantity/useFormat";
import { checkWords } from "../words/check";
import { marksFor, type Scheme } from "./marksFor";
import { changeSheet } from "./sheets";
import { TextField } from "./TextField";
import type { Check } from "./useCheck";

const kinds = ["girth", "ordinates", "angles"] as const;

/** The teacher's scheme of marks, and what this drawing earns. */
export function MarksView({ check: { sheet, verdict, places } }: { check: Check }) {
  const format = useFormat();
  const read = kinds.map((kind) => parseQuantity(sheet.marks[kind], { units: "mm", kind: "count" }));
  const full = (k: number) => { const one = read[k]; return one?.ok && one.value >= 0 ? one.value : 0; };
  const scheme: Scheme = { girth: full(0), ordinates: full(1), angles: full(2) };
  const marks = verdict && marksFor(verdict, scheme);
  return (
    <fieldset>
      <legend>{checkWords.marks}</legend>
      {kinds.map((kind, k) => {
        const one = read[k];
        if (kind === "angles" && places.angles.length === 0) return null;
        return (
          <label key={kind} className="setting">
            <span>{checkWords.markKinds(format.trade)[kind]}</span>
            <span className="field">
              <TextField
                label={checkWords.marksOf(checkWords.markKinds(format.trade)[kind])} text={sheet.marks[kind]} quantity="count"
                fault={one && !one.ok && sheet.marks[kind].trim() !== "" ? { kind: "quantity", reason: one.reason } : undefined}
                change={(text) => changeSheet((now) => ({ ...now, marks: { ...now.marks, [kind]: text } }))}
              />
            </span>
          </label>
        );
      })}
      {marks && marks.of > 0 && <p className="found" role="status">{checkWords.marked(format.figure(marks.sum, "count"), format.figure(marks.of, "count"))}</p>}
    </fieldset>
  );
}
