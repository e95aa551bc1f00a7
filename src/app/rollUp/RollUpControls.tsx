import type { Sight } from "../../drawing/pictorial/pictorialSight";
import { rollUpWords as said } from "../words/rollUp";
import { turnedStep, ways } from "./turned";
import type { Rolling } from "./useRolling";

interface Props {
  readonly rolling: Rolling;
  readonly sight: Sight;
  readonly turn: (sight: Sight) => void;
  readonly isometric: () => void;
}

/** Rolling by slider or by itself; turning by presses. */
export function RollUpControls({ rolling: { fraction, playing, still, set, play, pause }, sight, turn, isometric }: Props) {
  const percent = Math.round(fraction * 100);
  return (
    <div className="roll-up-controls">
      <div className="rolling">
        <button type="button" className="verb" onClick={playing ? pause : play}>
          {playing ? said.pause : still && fraction === 1 ? said.layFlat : said.play}
        </button>
        <input
          type="range"
          aria-label={said.rolledUp}
          aria-valuetext={said.percent(percent)}
          min={0}
          max={100}
          step={1}
          value={percent}
          onChange={(event) => set(event.target.valueAsNumber / 100)}
        />
      </div>
      <div className="turning" role="group" aria-label={said.turn}>
        <span aria-hidden="true">{said.turn}</span>
        {ways.map((way) => (
          <button key={way} type="button" className="verb" aria-label={said.turnTo(said.turns[way])} onClick={() => turn(turnedStep(sight, way))}>
            {said.turns[way]}
          </button>
        ))}
        <button type="button" className="verb" onClick={isometric}>
          {said.isometric}
        </button>
      </div>
    </div>
  );
}
