import type { ReactNode } from "react";
import type { Quantity } from "../quantity/format";
import { FaultSentence } from "../screen/FaultSentence";
import type { Fault } from "../store/attempt";

interface Props {
  readonly id: string;
  readonly fault: Fault | undefined;
  readonly quantity: Quantity;
  /** The sign after the field that must not begin a line. */
  readonly tail: string;
  readonly children: ReactNode;
}

/** A field with the sign that follows it and, at it, the sentence about what is wrong with what was typed. */
export function FieldFault({ id, fault, quantity, tail, children }: Props) {
  return (
    <span className="field">
      {children}
      {tail}
      {fault && (
        <span id={id} className="fault" role="alert">
          <FaultSentence fault={fault} quantity={quantity} />
        </span>
      )}
    </span>
  );
}
