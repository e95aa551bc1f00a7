import { papersOf, type PaperFamily } from "../../drawing/sheets/papers";
import type { Problem } from "../../core/index";
import { SCALES, scaleText } from "../../drawing/sheets/scales";
import { useFormat } from "../quantity/useFormat";
import { outputWords } from "../words/output";
import { choose, documents, files, useOutput, type OutputChoices, type PaperWanted, type Wanted } from "./choices";
import { CutFileChoices } from "./CutFileChoices";
import { documentKind } from "./useDocument";
import { PanelChoice } from "./PanelChoice";
import { PanelNumber } from "./PanelNumber";

/** "Make [a template, true to size] on [A3] lying [whichever way is better], with a margin of [10] and an overlap of [10] mm." */
export function WantedSentence({ problems }: { problems: readonly Problem[] }) {
  const choices = useOutput();
  const kind = documentKind(choices.what);
  const said = outputWords;
  return (
    <p className="sentence">
      {said.make}
      <PanelChoice label={said.what} value={choices.what} put={(what) => choose({ what: what as Wanted })} tail={kind || isCut(choices.what) ? "" : "."}>
        <optgroup label={said.documents}>{documents.map(wantedOption)}</optgroup>
        <optgroup label={said.files}>{files.map(wantedOption)}</optgroup>
      </PanelChoice>
      {kind && <OnPaper choices={choices} problems={problems} />}
      {isCut(choices.what) && <CutFileChoices />}
    </p>
  );
}

/** Whether this is a file of cut lines. */
export function isCut(what: Wanted): boolean {
  return what === "dxf" || what === "svg";
}

function wantedOption(what: Wanted) {
  return (
    <option key={what} value={what}>
      {outputWords.wanted[what]}
    </option>
  );
}

function OnPaper({ choices, problems }: { choices: OutputChoices; problems: readonly Problem[] }) {
  const { unit } = useFormat();
  const said = outputWords;
  const problem = (field: string) => problems.find((one) => one.field === field);
  const { what, paper, scale } = choices;
  const tiled = what === "template" || what === "all";
  const drawn = what === "board" || what === "all";
  return (
    <>
      {drawn && (
        <>
          {said.atScale}
          <PanelChoice label={said.scale} value={String(scale ?? "")} put={(value) => choose({ scale: value === "" ? null : Number(value) })}>
            <option value="">{said.best}</option>
            {SCALES.map((one) => (
              <option key={one} value={one}>
                {scaleText(one)}
              </option>
            ))}
          </PanelChoice>
        </>
      )}
      {said.on}
      <PanelChoice label={said.paper} value={paper} put={(value) => choose({ paper: value as PaperWanted })}>
        {(["iso", "us"] as const).map((family) => (
          <optgroup key={family} label={said.families[family]}>
            <option value={`smallest-${family}`}>{said.papers[`smallest-${family}`]}</option>
            {paperOptions(family)}
          </optgroup>
        ))}
        <optgroup label={said.families.other}>
          <option value="own">{said.papers.own}</option>
          <option value="roll">{said.papers.roll}</option>
        </optgroup>
      </PanelChoice>
      {(paper === "own" || paper === "roll") && (
        <>
          {" "}
          <PanelNumber label={said.width} value={choices.width} put={(width) => choose({ width })} problem={problem("paper.width")} />
          {said.wide}
        </>
      )}
      {paper === "own" && (
        <>
          {", "}
          <PanelNumber label={said.height} value={choices.height} put={(height) => choose({ height })} problem={problem("paper.height")} />
          {said.high}
        </>
      )}
      {", "}
      <PanelChoice label={said.orientation} value={choices.orientation} put={(value) => choose({ orientation: value as OutputChoices["orientation"] })}>
        {Object.entries(said.orientations).map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </PanelChoice>
      {said.withMargin}
      <PanelNumber label={said.margin} value={choices.margin} put={(margin) => choose({ margin })} problem={problem("margin") ?? problem("paper")} />
      {tiled && (
        <>
          {said.withOverlap}
          <PanelNumber label={said.overlap} value={choices.overlap} put={(overlap) => choose({ overlap })} problem={problem("overlap")} />
        </>
      )}
      {said.unit(unit)}
    </>
  );
}

function paperOptions(family: PaperFamily) {
  return papersOf(family).map(({ name }) => (
    <option key={name} value={name}>
      {name}
    </option>
  ));
}
