import { capital } from "../../../drawing/tradeWords";
import { scaleText } from "../../../drawing/sheets/scales";
import { PageView } from "../../print/PageView";
import { useFormat } from "../../quantity/useFormat";
import { FaultSentence } from "../../screen/FaultSentence";
import { sheetsWords as said } from "../../words/sheets";
import type { LaidOut } from "./useLessons";

/** Pages shown in small of each kind; the rest are counted. */
const shown = 2;

/** What will come out: each kind in words, with its first pages; or what stands in its way. */
export function LaidSheets({ laid }: { laid: readonly LaidOut[] | null }) {
  const { trade } = useFormat();
  const names = said.kinds(trade);
  return laid?.map(({ kind, outcome }) => {
    const name = capital((names[kind].split(":")[0] ?? "").trim());
    if (!outcome.ok) {
      return outcome.problems.map((problem, i) => (
        <p key={`${kind} ${i}`} className="fault" role="alert">
          {name}: <FaultSentence fault={{ kind: "problem", problem }} />
        </p>
      ));
    }
    const { pages, paper, scale } = outcome;
    return (
      <section key={kind} className="laid-sheets" aria-label={name}>
        <p>
          <strong>{name}:</strong> {said.made(pages.length, paper, scale === null ? null : scaleText(scale))}
        </p>
        <div className="previews">
          {pages.slice(0, shown).map((page, i) => (
            <PageView key={i} page={{ ...page, name: said.pageOf(name, i + 1) }} />
          ))}
          {pages.length > shown && <p>{said.more(pages.length - shown)}</p>}
        </div>
      </section>
    );
  });
}
