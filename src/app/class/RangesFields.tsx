import { memo } from "react";
import { exerciseFault, type Exercise, type RangeFault } from "../../core/index";
import { useFormat } from "../quantity/useFormat";
import { classWords as said } from "../words/class";
import { changeExercise, withoutRange } from "./changeExercise";
import { dimensionsOf, type Dimension } from "./dimensions";
import { RangeRow } from "./RangeRow";

/** Every number of the description, clause by clause, to be ticked when it is to differ; ranges whose number has gone are offered to be left out. */
export const RangesFields = memo(function RangesFields({ exercise }: { exercise: Exercise }) {
  const { trade } = useFormat();
  const all = dimensionsOf(exercise.job, trade);
  const fault = exerciseFault(exercise);
  const faultOf = (field: string): RangeFault | null => (fault?.kind === "range" && fault.field === field ? fault.fault : null);
  const clauses = [...new Set(all.map(({ clause }) => clause))];
  const lost = exercise.ranges.filter(({ field }) => !all.some((one) => one.field === field));
  return (
    <>
      {clauses.map((clause) => {
        const inside = all.filter((one) => one.clause === clause);
        return (
          <fieldset key={clause} className="ranges">
            <legend>{inside[0]?.clauseName}</legend>
            <ul>
              {inside.map((dimension: Dimension) => (
                <RangeRow key={dimension.field} dimension={dimension} range={exercise.ranges.find(({ field }) => field === dimension.field)} fault={faultOf(dimension.field)} />
              ))}
            </ul>
          </fieldset>
        );
      })}
      {lost.map(({ field }) => (
        <p key={field} className="notice" role="alert">
          {field}: {said.rangeFault["no-such-number"]}{" "}
          <button type="button" className="verb" onClick={() => changeExercise((now) => withoutRange(now, field))}>
            {said.drop}
          </button>
        </p>
      ))}
    </>
  );
});
