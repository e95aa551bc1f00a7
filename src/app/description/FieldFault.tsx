import type { ReactNode } from "react";

/** A field and, at it, the sentence about what is wrong with what was typed. */
export function FieldFault({ id, sentence, children }: { id: string; sentence: string | null; children: ReactNode }) {
  return (
    <span className="field">
      {children}
      {sentence !== null && (
        <span id={id} className="fault" role="alert">
          {sentence}
        </span>
      )}
    </span>
  );
}
