import { memo } from "react";
import type { Exercise, FabricationChoices } from "../../core/index";
import { useFormat } from "../quantity/useFormat";
import { takeClause } from "../store/store";
import { classWords as said } from "../words/class";
import { changeExercise, switched } from "./changeExercise";
import { namedSeams } from "./namedSeams";

const hands: readonly FabricationChoices["hand"][] = ["described", "opposite"];

/** The seams and the hands a class is given; where none is ticked all have that of the job. */
export const ChoicesFields = memo(function ChoicesFields({ exercise: { job, seams, hands: chosen } }: { exercise: Exercise }) {
  const format = useFormat();
  const isIn = (all: readonly unknown[], one: unknown) => all.some((other) => JSON.stringify(other) === JSON.stringify(one));
  return (
    <>
      <fieldset className="ranges" onPointerEnter={() => takeClause("seam")} onPointerLeave={() => takeClause(null)}>
        <legend>{said.seams}</legend>
        <div className="ticks">
          {namedSeams(job, format.trade, (degrees) => format.angle(degrees)).map(({ seam, name }) => (
            <Tick key={name} name={name} help="seams" on={isIn(seams, seam)} turn={(on) => changeExercise((now) => ({ ...now, seams: switched(now.seams, seam, on) }))} />
          ))}
        </div>
      </fieldset>
      <fieldset className="ranges">
        <legend>{said.hands}</legend>
        <div className="ticks">
          {hands.map((hand) => (
            <Tick key={hand} name={said.handNames[hand]} help="hands" on={chosen.includes(hand)} turn={(on) => changeExercise((now) => ({ ...now, hands: switched(now.hands, hand, on) }))} />
          ))}
        </div>
      </fieldset>
    </>
  );
});

/** A box to tick with its name; `help`: under which name it is explained. */
export function Tick({ name, on, turn, help }: { name: string; on: boolean; turn: (on: boolean) => void; help: string }) {
  return (
    <label className="tick">
      <input type="checkbox" data-help={help} checked={on} onChange={(event) => turn(event.target.checked)} />
      <span>{name}</span>
    </label>
  );
}
