import { memo, useId, useRef, useState, type CSSProperties, type KeyboardEvent } from "react";
import type { Vec2 } from "../../core/index";
import type { Handle } from "../../drawing/handles/handles";
import { stepped } from "../../drawing/handles/stepped";
import { stepOf, type Format } from "../quantity/format";
import { FaultSentence } from "../screen/FaultSentence";
import type { Gesture } from "../store/history";
import { selectJob } from "../store/select";
import { takeClause, useApp } from "../store/store";
import { handleWords } from "../words/handles";
import type { Beside } from "./drag";
import { goToField, keysOf } from "./fieldTokens";
import { fieldsNow, fitText, handleValue } from "./handleText";
import { putValues } from "./putValues";
import { useSnapping } from "./snapping";

interface Props {
  readonly handle: Handle;
  /** Where it stands, CSS pixels from the top left of the paper. */
  readonly place: Vec2;
  /** Whether a hand drags anything just now. */
  readonly moving: boolean;
  /** How far off the nearest handle is, CSS pixels: the room a finger has. */
  readonly room: number;
  readonly label: string;
  readonly format: Format;
  readonly state: "away" | "faint" | "in hand";
  /** Whether it is the one of its group that the Tab key stops at; `stopHere` makes it so. */
  readonly stop: boolean;
  readonly stopHere: (id: string) => void;
  /** While it is dragged. */
  readonly beside: Beside | null;
}

const ways: Readonly<Record<string, Vec2>> = { ArrowRight: { x: 1, y: 0 }, ArrowLeft: { x: -1, y: 0 }, ArrowUp: { x: 0, y: 1 }, ArrowDown: { x: 0, y: -1 } };

/** A place of the drawing that can be taken hold of: dragged, or stepped by the arrow keys. */
export const HandleView = memo(function HandleView({ handle, place, room, label, format, state, stop, stopHere, beside }: Props) {
  const gesture = useRef<Gesture>({});
  const [focused, setFocused] = useState(false);
  const besideId = useId();
  const [first] = fieldsNow(handle.grip);

  const onKeyDown = (event: KeyboardEvent) => {
    const way = ways[event.key];
    const [key] = keysOf(handle);
    if (!event.repeat) gesture.current = {};
    if (way) {
      const times = event.shiftKey ? 10 : event.altKey ? 0.1 : 1;
      const job = selectJob(useApp.getState());
      putValues(handle, job, stepped(handle, way, { length: times * stepOf("length", format.units), angle: times }), label, gesture.current);
    } else if (event.key === "Enter" && key !== undefined) goToField(key);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <div className="handle" data-state={state} data-dragging={beside ? true : undefined} style={{ left: place.x, top: place.y, "--room": `${room}px` } as CSSProperties}>
      <button
        type="button"
        className="grip"
        role="slider"
        tabIndex={stop ? 0 : -1}
        data-handle={handle.id}
        data-kind={handle.grip.kind}
        aria-label={label}
        aria-valuenow={first?.value ?? 0}
        aria-valuetext={handleValue(handle, format)}
        aria-describedby={beside ? besideId : undefined}
        onPointerEnter={() => takeClause(handle.clause)}
        onFocus={({ currentTarget }) => {
          setFocused(currentTarget.matches(":focus-visible"));
          stopHere(handle.id);
          takeClause(handle.clause);
        }}
        onBlur={() => setFocused(false)}
        onKeyDown={onKeyDown}
      />
      {(beside || focused) && <BesideView id={besideId} text={handleValue(handle, format)} beside={beside} />}
    </div>
  );
}, looksTheSame);

/** While a hand drags another handle, one that stays where it is waits until the hand lets go. */
function looksTheSame(before: Props, after: Props): boolean {
  const names = Object.keys(after) as (keyof Props)[];
  const still = after.moving && !after.beside && before.place.x === after.place.x && before.place.y === after.place.y;
  return names.every((name) => before[name] === after[name] || name === "moving" || (still && (name === "handle" || name === "place")));
}

function BesideView({ id, text, beside }: { id: string; text: string; beside: Beside | null }) {
  const job = useApp(selectJob);
  const snapping = useSnapping((state) => state.on);
  return (
    <output id={id} className="beside" aria-live="off">
      {text}
      {beside?.fits.map((fit, i) => (
        <span key={i}>{fitText(fit, job)}</span>
      ))}
      {beside?.fault && (
        <span>
          <FaultSentence fault={beside.fault} />
        </span>
      )}
      {beside && <small>{snapping ? handleWords.snap.on : handleWords.snap.off}</small>}
    </output>
  );
}
