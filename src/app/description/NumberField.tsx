import { useId, useState, type KeyboardEvent } from "react";
import { parseQuantity } from "../../core/index";
import type { NumberToken } from "../describe/token";
import { stepOf, type Format } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import type { Fault } from "../store/attempt";
import { commit, dropDraft, keepDraft, useApp } from "../store/store";
import { faultSentence } from "../words/fault";
import { FieldFault } from "./FieldFault";
import { useSidewaysDrag } from "./useSidewaysDrag";

/** A number edited where it stands: Enter or leaving the field makes the change, Escape takes the text back. */
export function NumberField({ token, tail = "" }: { token: NumberToken; tail?: string }) {
  const format = useFormat();
  const draft = useApp((state) => state.drafts[token.key]);
  const [typed, setTyped] = useState<string | null>(null);
  const faultId = useId();
  const text = typed ?? draft?.text ?? format.field(token.value, token.quantity);
  const write = (value: number) => commit(token.key, format.field(value, token.quantity), (job) => token.put(job, value));

  const finish = () => {
    if (typed === null) return;
    setTyped(null);
    if (!draft && typed === format.field(token.value, token.quantity)) return;
    const read = parseQuantity(typed, { units: format.units, kind: token.quantity });
    if (read.ok) commit(token.key, typed, (job) => token.put(job, read.value));
    else keepDraft(token.key, { text: typed, fault: { kind: "quantity", reason: read.reason }, change: null });
  };
  const step = (steps: number, from = numberIn(text, token, format)) => {
    setTyped(null);
    write(stepped(from, steps, stepOf(token.quantity, format.units)));
  };
  const drag = useSidewaysDrag(() => numberIn(text, token, format), (from, steps) => step(steps, from));

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") finish();
    else if (event.key === "Escape") {
      setTyped(null);
      dropDraft(token.key);
    } else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      event.preventDefault();
      step((event.key === "ArrowUp" ? 1 : -1) * (event.shiftKey ? 10 : event.altKey ? 0.1 : 1));
    }
  };

  return (
    <FieldFault tail={tail} id={faultId} sentence={draft ? sentence(draft.fault, format, token) : null}>
      <input
        className={`number ${token.quantity}`}
        aria-label={token.label}
        aria-invalid={draft ? true : undefined}
        aria-describedby={draft ? faultId : undefined}
        inputMode={token.quantity === "count" ? "numeric" : "text"}
        autoComplete="off"
        spellCheck={false}
        value={text}
        style={{ width: `calc(${Math.max(1, text.length)}ch + 0.7em)` }}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={finish}
        onKeyDown={onKeyDown}
        {...drag}
      />
      {token.quantity === "angle" && <span className="degree">°</span>}
    </FieldFault>
  );
}

/** The number typed, when it can be read; else the one in the job. */
function numberIn(text: string, token: NumberToken, format: Format): number {
  const read = parseQuantity(text, { units: format.units, kind: token.quantity });
  return read.ok ? read.value : token.value;
}

/** `steps` further, free of the rounding noise of adding up. */
function stepped(from: number, steps: number, step: number): number {
  return Number((from + steps * step).toPrecision(12));
}

function sentence(fault: Fault, format: Format, token: NumberToken): string {
  return faultSentence(fault, format, token.quantity);
}
