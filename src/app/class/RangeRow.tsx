import { useState } from "react";
import { LIMITS, type Problem, type RangeFault, type VariantRange } from "../../core/index";
import { PanelNumber } from "../output/PanelNumber";
import { useFormat } from "../quantity/useFormat";
import { takeClause } from "../store/store";
import { classWords as said } from "../words/class";
import { changeExercise, withoutRange, withRange } from "./changeExercise";
import { firstRange, type Dimension } from "./dimensions";

interface Props {
  readonly dimension: Dimension;
  readonly range: VariantRange | undefined;
  readonly fault: RangeFault | null;
}

/** "☑ Angle from square, from [25] to [45]° in steps of [5]°", or the number as it is; its part of the drawing lights up. */
export function RangeRow({ dimension, range, fault }: Props) {
  const format = useFormat();
  const { token, clause, clauseName } = dimension;
  const now = `${format.field(token.value, token.quantity)}${token.quantity === "angle" ? "°" : ""}`;
  const tick = (on: boolean) => changeExercise((exercise) => (on ? withRange(exercise, firstRange(dimension, format.units)) : withoutRange(exercise, dimension.field)));
  return (
    <li className="range" onPointerEnter={() => takeClause(clause)} onPointerLeave={() => takeClause(null)} onFocus={() => takeClause(clause)}>
      <label className="tick">
        <input type="checkbox" data-help="range" checked={range !== undefined} aria-label={said.differs(token.label, clauseName)} onChange={(event) => tick(event.target.checked)} />
        <span>{token.label}</span>
      </label>
      {range ? <RangeNumbers dimension={dimension} range={range} /> : <span className="range-now">{now}</span>}
      {fault && (
        <span className="fault" role="alert">
          {said.rangeFault[fault]}
        </span>
      )}
    </li>
  );
}

const ends = { from: said.from, to: said.to, step: said.by } as const;
const fields = { from: said.fromOf, to: said.toOf, step: said.stepOf } as const;

function RangeNumbers({ dimension: { token, clauseName }, range }: { dimension: Dimension; range: VariantRange }) {
  const [refused, setRefused] = useState<{ readonly end: keyof typeof ends; readonly problem: Problem } | null>(null);
  const put = (end: keyof typeof ends, value: number) => {
    const problem = outside(range.field, end, value);
    setRefused(problem && { end, problem });
    if (!problem) changeExercise((exercise) => withRange(exercise, { ...range, [end]: value }));
  };
  const what = said.differs(token.label, clauseName);
  return (
    <span className="range-numbers" data-help="range">
      {(["from", "to", "step"] as const).map((end) => (
        <span key={end}>
          {ends[end]}
          <PanelNumber
            label={fields[end](what)} quantity={token.quantity} value={range[end]} put={(value) => put(end, value)}
            problem={refused?.end === end ? refused.problem : undefined} tail={token.quantity === "angle" ? "°" : ""}
          />
        </span>
      ))}
    </span>
  );
}

/** What the job file does not hold. */
function outside(field: string, end: keyof typeof ends, value: number): Problem | null {
  const { min, max } = end === "step" ? LIMITS.rangeStep : LIMITS.rangeEnd;
  if (value >= min && value <= max) return null;
  return { code: value < min ? "too-small" : "too-large", field, value, min, max };
}
