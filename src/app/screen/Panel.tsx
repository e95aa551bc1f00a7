import { useLayoutEffect, useRef, type ReactNode } from "react";
import { words } from "../words/interface";
import { closePanel } from "./panel";
import "../theme/panels.css";

/** A sheet laid over the page: Escape, the word "Close" or a press beside it puts it away. */
export function Panel({ title, children }: { title: string; children: ReactNode }) {
  const dialog = useRef<HTMLDialogElement>(null);
  // Closed while it still stands on the page: only then does the focus go back to where it was.
  useLayoutEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  return (
    <dialog
      className="panel"
      ref={dialog}
      aria-label={title}
      onCancel={closePanel}
      onClose={closePanel}
      onClick={(event) => {
        if (event.target === event.currentTarget) closePanel();
      }}
    >
      <div className="panel-paper">
        <header>
          <h2>{title}</h2>
          <button type="button" className="verb" onClick={closePanel}>
            {words.close}
          </button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
