import { useFormat } from "../quantity/useFormat";
import { useFabrication } from "../shop/useFabrication";
import { outputWords } from "../words/output";
import { choose, useOutput, type OutputChoices } from "./choices";
import { PanelChoice } from "./PanelChoice";
import { PanelNumber } from "./PanelNumber";
import { toleranceProblem } from "./toleranceProblem";

/** ", [all parts side by side in one file], its curves as [lines and arcs] within [0.01] mm." */
export function CutFileChoices() {
  const { what, parts, curves, tolerance } = useOutput();
  const { unit } = useFormat();
  const several = useFabrication().parts.length > 1;
  const said = outputWords;
  return (
    <>
      {several && (
        <>
          {", "}
          <PanelChoice label={said.howMany} value={parts} put={(value) => choose({ parts: value as OutputChoices["parts"] })}>
            {optionsOf(said.parted)}
          </PanelChoice>
        </>
      )}
      {what === "dxf" ? (
        <>
          {said.curvesAs}
          <PanelChoice label={said.curves} value={curves} put={(value) => choose({ curves: value as OutputChoices["curves"] })}>
            {optionsOf(said.curveKinds)}
          </PanelChoice>
          {said.within}
          <PanelNumber label={said.tolerance} value={tolerance} put={(value) => choose({ tolerance: value })} problem={toleranceProblem(tolerance)} />
          {said.unit(unit)}
        </>
      ) : (
        "."
      )}
    </>
  );
}

function optionsOf(labels: Readonly<Record<string, string>>) {
  return Object.entries(labels).map(([value, label]) => (
    <option key={value} value={value}>
      {label}
    </option>
  ));
}
