import type { ReactNode } from "react";

interface Props {
  readonly id: string;
  readonly sentence: string | null;
  /** The sign after the field that must not begin a line. */
  readonly tail: string;
  readonly children: ReactNode;
}

/** A field with the sign that follows it and, at it, the sentence about what is wrong with what was typed. */
export function FieldFault({ id, sentence, tail, children }: Props) {
  return (
    <span className="field">
      {children}
      {tail}
      {sentence !== null && (
        <span id={id} className="fault" role="alert">
          {sentence}
        </span>
      )}
    </span>
  );
}
