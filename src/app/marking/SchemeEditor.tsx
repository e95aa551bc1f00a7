import { LIMITS } from "../../core/index";
import { VerbMenu } from "../description/VerbMenu";
import { useFormat } from "../quantity/useFormat";
import { changing } from "../store/changing";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { markingWords as said } from "../words/marking";
import { itemAdded, schemeBegun } from "./changeScheme";
import { ItemFields } from "./ItemFields";
import { readySchemes } from "./readySchemes";
import { RuleSentence } from "./RuleSentence";
import "../theme/marking.css";

/** What the teacher allows and gives marks for; kept with the job. */
export function SchemeEditor() {
  const { items } = useApp(selectJob).marking;
  const format = useFormat();
  const { trade } = format;
  const full = items.reduce((sum, { marks }) => sum + Math.max(0, marks), 0);
  const verbs = readySchemes.map((name) => ({ label: said.ready[name], act: () => changing((by) => void by.change((job) => schemeBegun(job, name, trade), said.ready[name])) }));
  return (
    <div className="marking">
      <RuleSentence />
      {items.length > 0 && <ol>{items.map((item, i) => <ItemFields key={item.id} item={item} first={i === 0} />)}</ol>}
      <p>{items.length === 0 ? said.none : said.total(format.figure(full, "count"))}</p>
      <div className="marking-verbs">
        <VerbMenu className="scheme-start" word={items.length === 0 ? said.start : said.startInstead} verbs={verbs} />
        {items.length < LIMITS.markItems.max && (
          <button type="button" className="verb" onClick={() => changing((by) => void by.change(itemAdded, said.add))}>
            {said.add}
          </button>
        )}
      </div>
    </div>
  );
}
