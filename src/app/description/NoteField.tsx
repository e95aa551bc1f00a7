import { useState } from "react";
import { LIMITS } from "../../core/index";
import { changing } from "../store/changing";
import { useApp } from "../store/store";
import { words } from "../words/interface";

/** A few lines of the maker's own, kept with the job. */
export function NoteField() {
  const note = useApp((state) => state.development.job.note);
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <label className="note">
      <span>{words.note}</span>
      <textarea
        rows={2}
        maxLength={LIMITS.note.max}
        placeholder=" "
        value={typed ?? note}
        data-typed={typed === null ? undefined : true}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => {
          if (typed !== null && typed !== note) changing((by) => by.change((job) => ({ ...job, note: typed }), words.note));
          setTyped(null);
        }}
      />
    </label>
  );
}
