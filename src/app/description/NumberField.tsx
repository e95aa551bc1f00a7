import { useId, useRef, useState, type KeyboardEvent, type PointerEvent } from "react";
import type { Problem } from "../../core/index";
import type { NumberToken } from "../describe/token";
import { useHelpOf } from "../help/helped";
import { useFormat } from "../quantity/useFormat";
import type { Fault } from "../store/attempt";
import type { Gesture } from "../store/history";
import { dropDraft, keepDraft, useApp } from "../store/store";
import { fetchedEditing, fetchEditing, type Editing } from "./fetchEditing";
import { FieldFault } from "./FieldFault";

/** A number edited where it stands: Enter or leaving the field makes the change, Escape takes the text back. `refused`: what follows from it and cannot be made. */
export function NumberField({ token, tail = "", refused }: { token: NumberToken; tail?: string; refused?: Problem | undefined }) {
  const format = useFormat();
  const draft = useApp((state) => state.drafts[token.key]);
  const [typed, setTyped] = useState<string | null>(null);
  const faultId = useId();
  const helped = useHelpOf(token.key);
  const fault: Fault | undefined = draft?.fault ?? (refused && { kind: "problem", problem: refused });
  const text = typed ?? draft?.text ?? format.field(token.value, token.quantity);

  /** What is typed stays in the field until the change is made or refused, also when it cannot even be tried. */
  const edit = (make: (by: Editing) => void) => {
    const done = () => setTyped((now) => (now === typed ? null : now));
    const editing = fetchedEditing();
    if (editing) {
      make(editing);
      done();
    } else {
      fetchEditing()
        .then(make, () => keepDraft(token.key, { text, fault: { kind: "failed" }, change: null }))
        .finally(done);
    }
  };
  const finish = () => {
    if (typed === null) return;
    if (!draft && typed === format.field(token.value, token.quantity)) setTyped(null);
    else edit((by) => by.finishTyping(token, typed, format));
  };
  const held = useRef<Gesture>({});
  /** Steps pressed and not yet made. */
  const steps = useRef(0);

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") finish();
    else if (event.key === "Escape") {
      setTyped(null);
      dropDraft(token.key);
    } else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      event.preventDefault();
      steps.current += (event.key === "ArrowUp" ? 1 : -1) * (event.shiftKey ? 10 : event.altKey ? 0.1 : 1);
      if (!event.repeat) held.current = {};
      const gesture = held.current;
      edit((by) => {
        if (steps.current) by.stepFrom(token, text, steps.current, format, gesture);
        steps.current = 0;
      });
    }
  };

  /** Only a field not being typed in can be dragged, so that dragging over typed text still selects it. Where it cannot be fetched, typing says so. */
  const onPointerDown = ({ button, currentTarget, nativeEvent }: PointerEvent<HTMLInputElement>) => {
    if (button !== 0 || document.activeElement === currentTarget) return;
    fetchEditing().then((by) => by.dragSideways(nativeEvent, currentTarget, token, format), () => undefined);
  };

  return (
    <FieldFault tail={tail} id={faultId} fault={fault} quantity={token.quantity}>
      <input
        className={`number ${token.quantity}`}
        aria-label={token.label}
        aria-invalid={fault ? true : undefined}
        aria-describedby={[fault && faultId, helped].filter(Boolean).join(" ") || undefined}
        inputMode={token.quantity === "count" ? "numeric" : "text"}
        autoComplete="off"
        spellCheck={false}
        value={text}
        data-field={token.key}
        data-typed={typed === null ? undefined : true}
        style={{ width: `calc(${Math.max(1, text.length)}ch + 0.7em)` }}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={finish}
        onKeyDown={onKeyDown}
        onPointerDown={onPointerDown}
        // The browser's own dragging of selected text would end ours.
        onDragStart={(event) => event.preventDefault()}
      />
      {token.quantity === "angle" && <span className="degree">°</span>}
    </FieldFault>
  );
}
