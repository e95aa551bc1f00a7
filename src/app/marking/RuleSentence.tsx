import { ChoiceField } from "../description/ChoiceField";
import { NumberField } from "../description/NumberField";
import { useFormat } from "../quantity/useFormat";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { markingWords } from "../words/marking";
import { ruleTokens } from "./markingTokens";

/** "Lengths may be off by ±[1] mm on the paper, angles by ±[1]°. The stretch-out is found by [π × diameter]." */
export function RuleSentence() {
  const { marking } = useApp(selectJob);
  const { trade, unit } = useFormat();
  const { tolerance, angle, girth } = ruleTokens(marking, trade);
  const said = markingWords.allowed;
  return (
    <p className="marking-rule">
      {said.lengths}
      <span data-help="tolerance"><NumberField token={tolerance} /></span> {unit} {said.angles}
      <span data-help="angleTolerance"><NumberField token={angle} /></span>
      {said.girth(trade)} <span data-help="girthRule"><ChoiceField token={girth} tail="." /></span>
    </p>
  );
}
