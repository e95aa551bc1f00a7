import { memo, useEffect, useId, useRef, useState, type CSSProperties, type KeyboardEvent, type PointerEvent } from "react";
import type { Vec2 } from "../../core/index";
import type { Handle } from "../../drawing/handles/handles";
import { stepped } from "../../drawing/handles/stepped";
import { useCamera } from "../board/camera";
import { stepOf, type Format } from "../quantity/format";
import { FaultSentence } from "../screen/FaultSentence";
import type { Gesture } from "../store/history";
import { selectDevelopment, selectJob } from "../store/select";
import { takeClause, useApp } from "../store/store";
import { handleWords } from "../words/handles";
import { beginDrag, type Beside, type Drag } from "./drag";
import { goToField, keysOf } from "./fieldTokens";
import { fieldsNow, fitText, handleValue } from "./handleText";
import { putValues } from "./putValues";

interface Props {
  readonly handle: Handle;
  /** Where it stands, CSS pixels from the top left of the paper. */
  readonly place: Vec2;
  /** How far off the nearest handle is, CSS pixels: the room a finger has. */
  readonly room: number;
  readonly label: string;
  readonly format: Format;
  readonly state: "away" | "faint" | "in hand";
}

const ways: Readonly<Record<string, Vec2>> = { ArrowRight: { x: 1, y: 0 }, ArrowLeft: { x: -1, y: 0 }, ArrowUp: { x: 0, y: 1 }, ArrowDown: { x: 0, y: -1 } };

/** A place of the drawing that can be taken hold of: dragged, or stepped by the arrow keys. */
export const HandleView = memo(function HandleView({ handle, place, room, label, format, state }: Props) {
  const [beside, setBeside] = useState<Beside | null>(null);
  const dragging = useRef<{ drag: Drag; x: number; y: number } | null>(null);
  const gesture = useRef<Gesture>({});
  const [focused, setFocused] = useState(false);
  const besideId = useId();
  useEscape(dragging);

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    const { shown } = useCamera.getState();
    if (event.button !== 0 || !shown || dragging.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const drag = beginDrag(handle, selectDevelopment(useApp.getState()), shown, label, setBeside);
    dragging.current = { drag, x: event.clientX, y: event.clientY };
  };
  const onPointerMove = ({ clientX, clientY, altKey }: PointerEvent) => {
    const now = dragging.current;
    now?.drag.move({ x: clientX - now.x, y: clientY - now.y }, !altKey);
  };
  const finish = (how: "end" | "abandon") => {
    dragging.current?.drag[how]();
    dragging.current = null;
  };
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
  const [first] = fieldsNow(handle.grip);

  return (
    <div className="handle" data-state={state} data-dragging={beside ? true : undefined} style={{ left: place.x, top: place.y, "--room": `${room}px` } as CSSProperties}>
      <button
        type="button"
        className="grip"
        role="slider"
        data-handle={handle.id}
        data-kind={handle.grip.kind}
        aria-label={label}
        aria-valuenow={first?.value ?? 0}
        aria-valuetext={handleValue(handle, format)}
        aria-describedby={beside ? besideId : undefined}
        onPointerEnter={() => takeClause(handle.clause)}
        onFocus={({ currentTarget }) => {
          setFocused(currentTarget.matches(":focus-visible"));
          takeClause(handle.clause);
        }}
        onBlur={() => setFocused(false)}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={() => finish("end")}
        onPointerCancel={() => finish("abandon")}
        onKeyDown={onKeyDown}
      />
      {(beside || focused) && <BesideView id={besideId} text={handleValue(handle, format)} beside={beside} />}
    </div>
  );
});

function BesideView({ id, text, beside }: { id: string; text: string; beside: Beside | null }) {
  const job = useApp(selectJob);
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
      {beside && <small>{handleWords.snap}</small>}
    </output>
  );
}

/** Escape gives a drag up, wherever the focus is. */
function useEscape(dragging: { current: { drag: Drag } | null }): void {
  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.key !== "Escape" || !dragging.current) return;
      event.stopPropagation();
      dragging.current.drag.abandon();
      dragging.current = null;
    };
    window.addEventListener("keydown", onKey, { capture: true });
    return () => window.removeEventListener("keydown", onKey, { capture: true });
  }, [dragging]);
}
