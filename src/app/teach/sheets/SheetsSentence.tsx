import { SCALES, scaleText } from "../../../drawing/sheets/scales";
import { papersOf, type PaperName } from "../../../drawing/sheets/papers";
import { PanelChoice } from "../../output/PanelChoice";
import { useFormat } from "../../quantity/useFormat";
import { sheetsWords as said } from "../../words/sheets";
import { chooseSheets, useSheets, type SheetChoices } from "./sheetChoices";

/** "On [A3], [whichever way is better], at scale [the largest that fits], in [first angle]." and what concerns single kinds. */
export function SheetsSentence() {
  const choices = useSheets();
  const { trade } = useFormat();
  const { kinds, paper, orientation, scale, angle } = choices;
  return (
    <>
      <p className="sentence">
        {said.on}{" "}
        <PanelChoice label={said.paper} value={paper} put={(value) => chooseSheets({ paper: value as PaperName })}>
          {(["iso", "us"] as const).map((family) => (
            <optgroup key={family} label={said.families[family]}>
              {papersOf(family).map(({ name }) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </optgroup>
          ))}
        </PanelChoice>
        {", "}
        <PanelChoice label={said.orientation} value={orientation} put={(value) => chooseSheets({ orientation: value as SheetChoices["orientation"] })}>
          {optionsOf(said.orientations)}
        </PanelChoice>
        {said.atScale}
        <PanelChoice label={said.scale} value={String(scale ?? "")} put={(value) => chooseSheets({ scale: value === "" ? null : Number(value) })}>
          <option value="">{said.largest}</option>
          {SCALES.map((one) => (
            <option key={one} value={one}>
              {scaleText(one)}
            </option>
          ))}
        </PanelChoice>
        {said.inAngle}
        <PanelChoice label={said.angle} value={angle ?? "job"} put={(value) => chooseSheets({ angle: value === "first" || value === "third" ? value : null })} tail=".">
          {optionsOf(said.angles)}
        </PanelChoice>
      </p>
      {kinds.includes("started") && (
        <p className="sentence">
          {said.begun(trade)}{" "}
          <PanelChoice label={said.started(trade)} value={choices.started} put={(value) => chooseSheets({ started: value as SheetChoices["started"] })} tail=".">
            {optionsOf(said.startedBy)}
          </PanelChoice>
        </p>
      )}
      {kinds.includes("steps") && (
        <p className="sentence">
          {said.pictures}{" "}
          <PanelChoice label={said.pictures} value={String(choices.stepsPerPage)} put={(value) => chooseSheets({ stepsPerPage: value === "2" ? 2 : value === "6" ? 6 : 4 })} tail=".">
            {optionsOf({ 2: "2", 4: "4", 6: "6" })}
          </PanelChoice>
        </p>
      )}
      <ViewChoices {...choices} />
    </>
  );
}

function ViewChoices({ other, found }: Pick<SheetChoices, "other" | "found">) {
  return (
    <div className="sheets-views">
      <label>
        <input type="checkbox" checked={other} onChange={(event) => chooseSheets({ other: event.target.checked })} />
        {said.other}
      </label>
      <label>
        <input type="checkbox" checked={found} onChange={(event) => chooseSheets({ found: event.target.checked })} />
        {said.found}
      </label>
    </div>
  );
}

function optionsOf(of: Readonly<Record<string, string>>) {
  return Object.entries(of).map(([value, label]) => (
    <option key={value} value={value}>
      {label}
    </option>
  ));
}
