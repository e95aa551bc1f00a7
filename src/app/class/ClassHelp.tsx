import { useFormat } from "../quantity/useFormat";
import { CLASS_HELP } from "../words/help/class";
import { helpWords } from "../words/help/helpWords";
import "../theme/help.css";

/** What the field in hand means; before there is one, how to ask. */
export function ClassHelp({ field }: { field: string | null }) {
  const { trade } = useFormat();
  const row = field === null ? undefined : CLASS_HELP[field];
  return (
    <aside className="field-help class-help" aria-label={helpWords.title}>
      <p>
        {row ? (
          <>
            <strong>{row.name}</strong> {typeof row.says === "string" ? row.says : row.says(trade)}
          </>
        ) : helpWords.invitation}
      </p>
    </aside>
  );
}
