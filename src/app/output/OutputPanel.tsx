import { useEffect } from "react";
import type { Problem } from "../../core/index";
import { cancelPdf } from "../print/pdfJob";
import { FaultSentence } from "../screen/FaultSentence";
import { Panel } from "../screen/Panel";
import { useFabrication } from "../shop/useFabrication";
import { outputWords } from "../words/output";
import { Checks } from "./Checks";
import { useOutput } from "./choices";
import { CutPreview } from "./CutPreview";
import { MakeVerb } from "./MakeVerb";
import { PagesView } from "./PagesView";
import { PartList } from "./PartList";
import { PrinterSentence } from "./PrinterSentence";
import { useDocument } from "./useDocument";
import { isCut, WantedSentence } from "./WantedSentence";
import "../theme/output.css";

/** The fields of the sentence, where a problem is said in its place. */
const atField = ["paper", "paper.width", "paper.height", "margin", "overlap"];

const none: readonly Problem[] = [];

/** One place for all that leaves the program: what to make and on what, what will come out, what to check, and the verb that makes it. */
export function OutputPanel() {
  const what = useOutput((choices) => choices.what);
  const shown = useDocument();
  const fabrication = useFabrication();
  useEffect(() => cancelPdf, []);
  const problems = shown && !shown.outcome.ok ? shown.outcome.problems : none;
  const cuts = isCut(what) || what === "template" || what === "all";
  const unmade = cuts ? fabrication.problems : none;
  return (
    <Panel title={outputWords.title}>
      <WantedSentence problems={problems} />
      {shown && <PrinterSentence paper={shown.paper} correction={shown.correction} />}
      {problems.filter(({ field }) => !atField.includes(field)).map((problem, i) => (
        <p key={i} className="fault" role="alert">
          <FaultSentence fault={{ kind: "problem", problem }} />
        </p>
      ))}
      {unmade.length > 0 && (
        <div className="fault" role="alert">
          <p>{outputWords.mend}</p>
          {unmade.map((problem, i) => (
            <p key={i}>
              <FaultSentence fault={{ kind: "problem", problem }} />
            </p>
          ))}
        </div>
      )}
      {isCut(what) && <CutPreview />}
      {shown?.outcome.ok && <PagesView sections={shown.outcome.sections} />}
      <MakeVerb shown={shown} barred={unmade.length > 0} />
      <Checks what={what} />
      <PartList />
    </Panel>
  );
}
