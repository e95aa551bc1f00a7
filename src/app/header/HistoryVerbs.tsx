import { useEffect, useState } from "react";
import { changing } from "../store/changing";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { historyKey } from "./historyKey";

const said = { undo: words.undone, redo: words.redone } as const;

/** The verbs that go back and forth through what was done, also by the usual keys; what they did is said to screen readers. */
export function HistoryVerbs() {
  const undoes = useApp((state) => state.undo);
  const redoes = useApp((state) => state.redo);
  const [spoken, speak] = useState({ text: "", count: 0 });
  const act = (name: keyof typeof said) => {
    changing((by) => {
      const what = by[name]();
      if (what !== null) speak(({ count }) => ({ text: said[name](what), count: count + 1 }));
    });
  };
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const name = historyKey(event);
      if (!name) return;
      event.preventDefault();
      act(name);
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, []);
  return (
    <div className="history">
      <HistoryVerb word={words.verbs.undo} what={undoes} act={() => act("undo")} />
      <HistoryVerb word={words.verbs.redo} what={redoes} act={() => act("redo")} />
      <span className="unseen" aria-live="polite">
        {/* Set anew each time, so that the same words are said again. */}
        <span key={spoken.count}>{spoken.text}</span>
      </span>
    </div>
  );
}

/** A verb with nothing to do keeps its place and the focus. */
function HistoryVerb({ word, what, act }: { word: string; what: string | null; act: () => void }) {
  const label = what === null ? word : words.done(word, what);
  return (
    <button type="button" className="verb" aria-label={label} title={label} aria-disabled={what === null} onClick={act}>
      {word}
    </button>
  );
}
