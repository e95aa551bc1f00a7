import type { ReactNode } from "react";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly put: (value: string) => void;
  readonly children: ReactNode;
  readonly tail?: string;
}

/** A choice of a panel, made where it stands in the sentence; its options are its children. */
export function PanelChoice({ label, value, put, children, tail = "" }: Props) {
  return (
    <span className="field">
      <select className="choice" aria-label={label} value={value} onChange={(event) => put(event.target.value)}>
        {children}
      </select>
      {tail}
    </span>
  );
}
