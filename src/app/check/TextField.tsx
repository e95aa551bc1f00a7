import { useId, type ClipboardEvent, type KeyboardEvent } from "react";
import type { Quantity } from "../quantity/format";
import { FaultSentence } from "../screen/FaultSentence";
import type { Fault } from "../store/attempt";
import "../theme/reading.css";

interface Props {
  readonly label: string;
  readonly text: string;
  readonly quantity: Quantity;
  readonly fault: Fault | undefined;
  readonly change: (text: string) => void;
  readonly hint?: string;
  readonly name?: string;
  /** Its name in the table of help. */
  readonly help?: string;
  readonly onKeyDown?: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onPaste?: (event: ClipboardEvent<HTMLInputElement>) => void;
}

/** A field whose text stays as typed; what cannot be read is said below it. */
export function TextField({ label, text, quantity, fault, change, hint, name, help, onKeyDown, onPaste }: Props) {
  const id = useId();
  return (
    <>
      <input
        className="reading"
        aria-label={label}
        aria-invalid={fault ? true : undefined}
        aria-describedby={fault ? id : undefined}
        inputMode={quantity === "count" ? "numeric" : "text"}
        autoComplete="off"
        spellCheck={false}
        placeholder={hint}
        data-reading={name}
        data-help={help}
        value={text}
        onChange={(event) => change(event.target.value)}
        onFocus={(event) => event.target.select()}
        onKeyDown={onKeyDown}
        onPaste={onPaste}
      />
      {fault && (
        <span id={id} className="fault" role="alert">
          <FaultSentence fault={fault} quantity={quantity} />
        </span>
      )}
    </>
  );
}
