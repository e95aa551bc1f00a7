import { useState } from "react";
import { LIMITS, type MarkingItem } from "../../core/index";
import { ChoiceField } from "../description/ChoiceField";
import { NumberField } from "../description/NumberField";
import { useFormat } from "../quantity/useFormat";
import { changing } from "../store/changing";
import { markingWords as said } from "../words/marking";
import { itemMoved, itemRemoved } from "./changeScheme";
import { itemTokens, withItem } from "./markingTokens";
import "../theme/reading.css";

/** One item of the scheme: what the marks are for, how many, given or taken off, and what decides. */
export function ItemFields({ item, first }: { item: MarkingItem; first: boolean }) {
  const { trade } = useFormat();
  const { marks, sign, by } = itemTokens(item, trade);
  const name = item.text || said.untitled;
  const act = (what: string, change: typeof itemRemoved) => changing((to) => void to.change((job) => change(job, item.id), what));
  return (
    <li className="marking-item">
      <ItemText item={item} />
      <p>
        <span data-help="itemMarks"><NumberField token={marks} /></span> <span data-help="itemSign"><ChoiceField token={sign} /></span> {said.decided}{" "}
        <span data-help="itemBy"><ChoiceField token={by} /></span>
        <span className="marking-verbs">
          {!first && (
            <button type="button" className="verb" aria-label={said.upOf(name)} onClick={() => act(said.upOf(name), (job, id) => itemMoved(job, id, -1))}>
              {said.up}
            </button>
          )}
          <button type="button" className="verb" aria-label={said.remove(name)} onClick={() => act(said.remove(name), itemRemoved)}>
            {said.removeWord}
          </button>
        </span>
      </p>
    </li>
  );
}

function ItemText({ item: { id, text } }: { item: MarkingItem }) {
  const [typed, setTyped] = useState<string | null>(null);
  const finish = () => {
    if (typed !== null && typed !== text) changing((by) => by.change((job) => withItem(job, id, { text: typed }), said.fields.text));
    setTyped(null);
  };
  return (
    <textarea
      className="reading" data-help="itemText" rows={1} aria-label={said.fields.text} maxLength={LIMITS.markText.max} value={typed ?? text}
      data-typed={typed === null ? undefined : true}
      onChange={(event) => setTyped(event.target.value.replaceAll("\n", " "))}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === "Enter") {
          event.preventDefault();
          finish();
        }
        else if (event.key === "Escape") setTyped(null);
      }}
    />
  );
}
