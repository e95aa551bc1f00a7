import { CHOICES } from "../../core/index";
import { SettingField } from "../settings/SettingField";
import { checkWords } from "../words/check";
import { useExaggeration } from "./exaggeration";
import { scaleOf, type Sheet } from "./sheet";
import { changeSheet } from "./sheets";
import { TextField } from "./TextField";
import type { Check } from "./useCheck";

/** How the drawing was made, and how its errors are shown. */
export function DrawingFields({ check: { sheet, faults, job } }: { check: Check }) {
  const times = useExaggeration((state) => state.times);
  const put = (part: Partial<Sheet>) => changeSheet((now) => ({ ...now, ...part }));
  const text = (name: "count" | "start", label: string, quantity: "count" | "angle", hint: string) => (
    <label className="setting">
      <span>{label}</span>
      <span className="field">
        <TextField label={label} text={sheet[name]} quantity={quantity} fault={faults[name]} help={name} hint={hint} change={(typed) => put({ [name]: typed })} />
      </span>
    </label>
  );
  return (
    <fieldset>
      <legend>{checkWords.drawing}</legend>
      <SettingField help="scale" label={checkWords.scale} value={scaleOf(sheet, job)} options={Object.fromEntries(CHOICES.drawnScale.of.map((name) => [name, name]))} choose={(scale) => put({ scale: scale as Sheet["scale"] })} />
      {job.drawing.sheetScale !== null && <p className="found">{checkWords.sheetScale(job.drawing.sheetScale)}</p>}
      {text("count", checkWords.count, "count", String(job.development.stations))}
      {text("start", checkWords.start, "angle", checkWords.atSeam)}
      <SettingField help="along" label={checkWords.along} value={sheet.along} options={checkWords.alongs} choose={(along) => put({ along: along as Sheet["along"] })} />
      <p className="found">{checkWords.drawingHelp}</p>
      <SettingField help="exaggerate" label={checkWords.exaggerate} value={String(times)} options={checkWords.times} choose={(value) => useExaggeration.setState({ times: Number(value) })} />
    </fieldset>
  );
}
