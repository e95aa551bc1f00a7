import { useId } from "react";
import type { ChoiceToken } from "../describe/token";
import { useHelpOf } from "../help/helped";
import { changing } from "../store/changing";
import { spell, useApp } from "../store/store";
import { FieldFault } from "./FieldFault";

/** A choice made where it stands in the sentence. */
export function ChoiceField({ token, tail = "" }: { token: ChoiceToken; tail?: string }) {
  const draft = useApp((state) => state.drafts[token.key]);
  const faultId = useId();
  const helped = useHelpOf(token.key);
  const choose = (value: string) => {
    if (token.spells !== undefined) spell(token.key.replace(/\.side$/, ""), value === token.spells);
    changing((by) => by.commit(token.key, value, (job) => token.put(job, value), token.label));
  };
  return (
    <FieldFault tail={tail} id={faultId} fault={draft?.fault} quantity="length">
      <select
        className="choice"
        data-field={token.key}
        aria-label={token.label}
        aria-invalid={draft ? true : undefined}
        aria-describedby={[draft && faultId, helped].filter(Boolean).join(" ") || undefined}
        value={draft?.text ?? token.value}
        onChange={(event) => choose(event.target.value)}
      >
        {token.options.map(({ value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </FieldFault>
  );
}
