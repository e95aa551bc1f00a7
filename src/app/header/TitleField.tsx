import { useState } from "react";
import { LIMITS } from "../../core/index";
import { changing } from "../store/changing";
import { useApp } from "../store/store";
import { words } from "../words/interface";

/** The title of the job, edited in place. */
export function TitleField() {
  const title = useApp((state) => state.development.job.title);
  const [typed, setTyped] = useState<string | null>(null);
  const finish = () => {
    if (typed !== null && typed !== title) changing((by) => by.change((job) => ({ ...job, title: typed }), words.title));
    setTyped(null);
  };
  return (
    <input
      className="title"
      aria-label={words.title}
      placeholder={words.untitled}
      maxLength={LIMITS.title.max}
      autoComplete="off"
      value={typed ?? title}
      data-typed={typed === null ? undefined : true}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === "Enter") event.currentTarget.blur();
        else if (event.key === "Escape") setTyped(null);
      }}
    />
  );
}
