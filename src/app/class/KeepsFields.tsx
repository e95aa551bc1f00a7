import { memo } from "react";
import { LIMITS, type Exercise, type Keeps } from "../../core/index";
import { PanelNumber } from "../output/PanelNumber";
import { useFormat } from "../quantity/useFormat";
import { classWords as said } from "../words/class";
import { changeExercise } from "./changeExercise";

/** A least ordinate, and a room, to begin with: an A3 sheet less frame and title block, mm. */
const FIRST = { ordinate: 10, sheet: { width: 380, height: 240 } } as const;

/** What every piece must keep to. */
export const KeepsFields = memo(function KeepsFields({ exercise: { keeps } }: { exercise: Exercise }) {
  const { trade, unit } = useFormat();
  const put = (part: Partial<Keeps>) => changeExercise((now) => ({ ...now, keeps: { ...now.keeps, ...part } }));
  const { inside, ordinate, sheet } = keeps;
  return (
    <fieldset className="ranges keeps">
      <legend>{said.keeps}</legend>
      <label className="tick">
        <input type="checkbox" data-help="inside" checked={inside} onChange={(event) => put({ inside: event.target.checked })} />
        <span>{said.inside}</span>
      </label>
      <div className="tick">
        <input type="checkbox" data-help="ordinate" aria-label={said.ordinateField} checked={ordinate > 0} onChange={(event) => put({ ordinate: event.target.checked ? FIRST.ordinate : 0 })} />
        <span data-help="ordinate">
          {said.ordinate}
          {ordinate > 0 ? <PanelNumber label={said.ordinateField} value={ordinate} put={(value) => put({ ordinate: within(value, LIMITS.leastOrdinate) })} tail={` ${unit}`} /> : "…"}
        </span>
      </div>
      <div className="tick">
        <input type="checkbox" data-help="sheet" aria-label={said.sheet(trade)} checked={sheet !== null} onChange={(event) => put({ sheet: event.target.checked ? { ...FIRST.sheet } : null })} />
        <span data-help="sheet">
          {said.sheet(trade)}
          {sheet ? (
            <>
              <PanelNumber label={said.sheetWidth} value={sheet.width} put={(width) => put({ sheet: { ...sheet, width: within(width, LIMITS.room) } })} />
              {said.times}
              <PanelNumber label={said.sheetHeight} value={sheet.height} put={(height) => put({ sheet: { ...sheet, height: within(height, LIMITS.room) } })} tail={` ${unit}`} />
            </>
          ) : "…"}
        </span>
      </div>
    </fieldset>
  );
});

/** The nearest value the job file holds. */
function within(value: number, { min, max }: { readonly min: number; readonly max: number }): number {
  return Math.min(max, Math.max(min, value));
}
