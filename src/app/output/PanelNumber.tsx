import { useId, useState } from "react";
import { parseQuantity, type Problem } from "../../core/index";
import { FieldFault } from "../description/FieldFault";
import { kindOf, stepOf, type Quantity } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import type { Fault } from "../store/attempt";

interface Props {
  readonly label: string;
  readonly quantity?: Quantity;
  readonly value: number;
  readonly put: (value: number) => void;
  /** What is wrong with the value as it stands. */
  readonly problem?: Problem | undefined;
  readonly tail?: string;
}

/** A number of a panel, edited where it stands in the sentence; text that is no quantity stays with its reason. */
export function PanelNumber({ label, quantity = "length", value, put, problem, tail = "" }: Props) {
  const format = useFormat();
  const faultId = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  const text = typed ?? format.field(value, quantity);
  const shown = fault ?? (problem && { kind: "problem", problem });

  const finish = () => {
    if (typed === null) return;
    const read = parseQuantity(typed, { units: format.units, kind: kindOf(quantity) });
    setFault(read.ok ? null : { kind: "quantity", reason: read.reason });
    if (!read.ok) return;
    setTyped(null);
    put(read.value);
  };
  const step = (steps: number) => {
    setTyped(null);
    setFault(null);
    put(Number((value + steps * stepOf(quantity, format.units)).toPrecision(12)));
  };

  return (
    <FieldFault id={faultId} fault={shown} quantity={quantity} tail={tail}>
      <input
        className={`number ${quantity}`}
        aria-label={label}
        aria-invalid={shown ? true : undefined}
        aria-describedby={shown ? faultId : undefined}
        autoComplete="off"
        spellCheck={false}
        value={text}
        style={{ width: `calc(${Math.max(1, text.length)}ch + 0.7em)` }}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={finish}
        onKeyDown={(event) => {
          if (event.key === "Enter") finish();
          else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
            event.preventDefault();
            step((event.key === "ArrowUp" ? 1 : -1) * (event.shiftKey ? 10 : 1));
          }
        }}
      />
    </FieldFault>
  );
}
