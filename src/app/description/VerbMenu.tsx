import { useEffect, useId, useRef, useState } from "react";

export interface Verb {
  readonly label: string;
  readonly act: () => void;
  readonly disabled?: boolean;
}

/** A word that opens a short list of verbs; Escape, a press elsewhere or a verb chosen closes it. */
export function VerbMenu({ word, label, verbs, className }: { word: string; label?: string; verbs: readonly Verb[]; className: string }) {
  const [open, setOpen] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLUListElement>(null);
  const listId = useId();

  useEffect(() => {
    if (!open) return;
    list.current?.scrollIntoView?.({ block: "nearest" });
    const close = (event: PointerEvent | FocusEvent) => {
      if (event.target instanceof Node && !box.current?.contains(event.target)) setOpen(false);
    };
    document.addEventListener("pointerdown", close);
    document.addEventListener("focusin", close);
    return () => {
      document.removeEventListener("pointerdown", close);
      document.removeEventListener("focusin", close);
    };
  }, [open]);

  return (
    <div
      className={`verb-menu ${className}`}
      ref={box}
      onKeyDown={(event) => {
        if (event.key !== "Escape" || !open) return;
        event.stopPropagation();
        setOpen(false);
        opener.current?.focus();
      }}
    >
      <button type="button" className="verb" ref={opener} aria-expanded={open} aria-controls={listId} aria-label={label} onClick={() => setOpen(!open)}>
        {word}
      </button>
      <ul id={listId} ref={list} hidden={!open}>
        {verbs.map((verb) => (
          <li key={verb.label}>
            <button
              type="button"
              className="verb"
              disabled={verb.disabled}
              onClick={() => {
                setOpen(false);
                opener.current?.focus();
                verb.act();
              }}
            >
              {verb.label}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
