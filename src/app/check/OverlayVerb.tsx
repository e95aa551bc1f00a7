import { useState } from "react";
import type { Problem } from "../../core/index";
import { cutFileName } from "../files/cutFileName";
import { cancelPdf, startPdf, usePdfJob } from "../print/pdfJob";
import { useFormat } from "../quantity/useFormat";
import { FaultSentence } from "../screen/FaultSentence";
import { sayNotFetched } from "../store/changing";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { checkWords } from "../words/check";
import { words } from "../words/interface";
import { outputWords } from "../words/output";
import type { Check } from "./useCheck";

/** Makes an overlay at the drawing's scale, with what is allowed to either side, on the paper chosen for printing. */
export function OverlayVerb({ check: { readings, rule }, student }: { check: Check; student: string }) {
  const development = useApp(selectDevelopment);
  const format = useFormat();
  const { state, done, total } = usePdfJob();
  const [problem, setProblem] = useState<Problem | null>(null);
  const title = development.job.title || words.untitled;

  const make = async () => {
    const { overlayDocument } = await import("./overlayDocument");
    const outcome = overlayDocument(development, { scale: readings.scale, tolerance: rule.tolerance, stepped: rule.girth === "stepped" }, format, student);
    setProblem(outcome.ok ? null : (outcome.problems[0] ?? null));
    if (outcome.ok) await startPdf(outcome.pages, { title, fileName: cutFileName({ title, piece: [checkWords.overlayFile, student].filter((one) => one !== "").join(", "), size: null, extension: "pdf" }) });
  };
  return (
    <>
      <button type="button" className="verb" title={checkWords.overlayTitle} onClick={() => void (state === "making" ? cancelPdf() : make().catch(sayNotFetched))}>
        {state === "making" ? outputWords.cancel : checkWords.overlay}
      </button>
      <span role="status">{state === "making" ? outputWords.making(done, total) : state === "failed" ? outputWords.failed : ""}</span>
      {problem && (
        <span className="fault" role="alert">
          <FaultSentence fault={{ kind: "problem", problem }} />
        </span>
      )}
    </>
  );
}
