import { SettingField } from "../settings/SettingField";
import { useFormat } from "../quantity/useFormat";
import { checkWords } from "../words/check";
import { SCALES, type Sheet } from "./sheet";
import { changeSheet } from "./sheets";
import { TextField } from "./TextField";
import type { Check } from "./useCheck";
import { useExaggeration } from "./exaggeration";

/** How the drawing was made, and what the teacher allows. */
export function DrawingFields({ check: { sheet, faults, job } }: { check: Check }) {
  const { trade } = useFormat();
  const times = useExaggeration((state) => state.times);
  const put = (part: Partial<Sheet>) => changeSheet((now) => ({ ...now, ...part }));
  const text = (name: "count" | "start" | "tolerance" | "angle", label: string, quantity: "count" | "angle" | "length", hint = "") => (
    <label className="setting">
      <span>{label}</span>
      <span className="field">
        <TextField label={label} text={sheet[name]} quantity={quantity} fault={faults[name]} hint={hint} change={(typed) => put({ [name]: typed })} />
      </span>
    </label>
  );
  return (
    <>
      <fieldset>
        <legend>{checkWords.drawing}</legend>
        <SettingField label={checkWords.scale} value={sheet.scale} options={Object.fromEntries(Object.keys(SCALES).map((name) => [name, name]))} choose={(scale) => put({ scale: scale as Sheet["scale"] })} />
        {text("count", checkWords.count, "count", String(job.development.stations))}
        {text("start", checkWords.start, "angle", checkWords.atSeam)}
        <SettingField label={checkWords.along} value={sheet.along} options={checkWords.alongs} choose={(along) => put({ along: along as Sheet["along"] })} />
      </fieldset>
      <fieldset>
        <legend>{checkWords.rule}</legend>
        {text("tolerance", checkWords.tolerance, "length")}
        {text("angle", checkWords.angleTolerance, "angle")}
        <SettingField label={checkWords.girthRule(trade)} value={sheet.girth} options={checkWords.girthRules} choose={(girth) => put({ girth: girth as Sheet["girth"] })} />
        <SettingField label={checkWords.exaggerate} value={String(times)} options={checkWords.times} choose={(value) => useExaggeration.setState({ times: Number(value) })} />
      </fieldset>
    </>
  );
}
