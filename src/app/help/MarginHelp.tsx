import { useEffect, useState, type RefObject } from "react";
import { useFormat } from "../quantity/useFormat";
import type { TradeWords } from "../../drawing/tradeWords";
import { useSettings } from "../store/settings";
import { helpWords } from "../words/help/helpWords";
import { words } from "../words/interface";
import { switchHelp } from "./helped";
import "../theme/help.css";

/** What is said of each field of a margin, by the name in its `data-help`. */
export type MarginHelpTable = Readonly<Record<string, string | ((trade: TradeWords) => string)>>;

/** The verb that explains the fields of a margin, and below it what the one in hand means. */
export function MarginHelp({ margin, table }: { margin: RefObject<HTMLElement | null>; table: MarginHelpTable }) {
  const on = useSettings((settings) => settings.explain);
  const { trade } = useFormat();
  const [name, setName] = useState<string | null>(null);
  useEffect(() => {
    const element = margin.current;
    const look = ({ target }: FocusEvent) => {
      const found = target instanceof Element ? target.closest<HTMLElement>("[data-help]")?.dataset.help : undefined;
      if (found !== undefined) setName(found);
    };
    element?.addEventListener("focusin", look);
    return () => element?.removeEventListener("focusin", look);
  }, [margin]);
  const said = name === null ? undefined : table[name];
  return (
    <div className="margin-help">
      <button type="button" className="verb explain" aria-pressed={on} title={words.explainTitle} onClick={switchHelp}>
        {words.explain}
      </button>
      {on && (
        <aside className="field-help" aria-label={helpWords.title} aria-live="polite">
          <p>{said === undefined ? helpWords.invitationHere : typeof said === "string" ? said : said(trade)}</p>
        </aside>
      )}
    </div>
  );
}
