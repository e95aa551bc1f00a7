import { useEffect, useMemo, useRef, useState } from "react";
import type { Problem } from "../../core/index";
import { clauseMemory } from "../describe/reusedClauses";
import { useUnhurried } from "../board/useUnhurried";
import { shopAdded, shopOrder, type ShopWord } from "../describe/shop/changeShop";
import { clauseId, keysOf, shopClauses } from "../describe/shop/shopClauses";
import type { Clause } from "../describe/token";
import { useFormat } from "../quantity/useFormat";
import { foundLines } from "../shop/foundLines";
import { useFabrication } from "../shop/useFabrication";
import { changing } from "../store/changing";
import { selectClause, selectDevelopment, selectSpelled } from "../store/select";
import { spell, useApp } from "../store/store";
import { shopWords } from "../words/shop";
import { verbWords } from "../words/verbs";
import { ClauseView } from "./ClauseView";
import { VerbMenu } from "./VerbMenu";

const none: readonly Problem[] = [];
const reused = clauseMemory();

/** What the shop adds to the description, and the verb that adds to it. */
export function ShopPart() {
  const development = useUnhurried(selectDevelopment, "handle");
  const { job } = development;
  const spelled = useApp(selectSpelled);
  const inHand = useApp(selectClause);
  const format = useFormat();
  const fabrication = useFabrication();
  const clauses = useMemo(() => reused(shopClauses(job, spelled)), [job, spelled]);
  const found = useMemo(() => foundLines(development, fabrication, format), [development, fabrication, format]);
  const problemsOf = ({ field }: Clause) => {
    const own = fabrication.problems.filter((problem) => problem.field.startsWith(field));
    return own.length ? own : none;
  };
  const list = useRef<HTMLUListElement>(null);
  const [added, setAdded] = useState<string | null>(null);

  // The first field of a clause just added is the next to be typed into.
  useEffect(() => {
    const field = added === null ? null : list.current?.querySelector<HTMLElement>(`[data-clause="${CSS.escape(added)}"] [data-field]`);
    if (!field) return;
    field.focus();
    setAdded(null);
  }, [added, clauses]);

  // A refusal that follows from what was just typed is brought into sight.
  const refused = fabrication.problems.map(({ code, field }) => `${code} ${field}`).join();
  const seen = useRef(refused);
  useEffect(() => {
    if (seen.current === refused) return;
    seen.current = refused;
    const fault = list.current?.querySelector("[aria-invalid], .notice");
    if (fault && isTypedInto(list.current)) fault.closest(".clause")?.scrollIntoView({ block: "nearest" });
  }, [refused]);

  const add = (word: ShopWord) => {
    changing((by) => {
      const before = useApp.getState().development.job;
      const { job: after, clause } = shopAdded(before, word);
      const [key] = keysOf(clause);
      if (after !== before) by.change(() => after, shopWords.add[word]);
      else if (key !== undefined) spell(key, true);
      setAdded(clauseId(clause));
    });
  };

  return (
    <>
      {clauses.length > 0 && (
        <ul className="clauses" ref={list}>
          {clauses.map((clause) => (
            <ClauseView key={clause.id} clause={clause} inHand={clause.id === inHand} notices={problemsOf(clause)} found={found.get(clause.id)} />
          ))}
        </ul>
      )}
      <VerbMenu className="add-cut" word={verbWords.addShop} verbs={shopOrder.map((word) => ({ label: shopWords.add[word], act: () => add(word) }))} />
    </>
  );
}

/** Whether the reader is at work in the list, or has just left its last field. */
function isTypedInto(list: HTMLElement | null): boolean {
  const { activeElement } = document;
  return activeElement === document.body || (list?.parentElement?.contains(activeElement) ?? false);
}
