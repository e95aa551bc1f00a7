import { useMemo, useState, type MouseEvent } from "react";
import { cutFileName } from "../files/cutFileName";
import { cancelPdf, startPdf, usePdfJob } from "../print/pdfJob";
import { useFormat } from "../quantity/useFormat";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { outputWords } from "../words/output";
import { useOutput, type Wanted } from "./choices";
import { saveFile, type FileWanted } from "./saveFile";
import type { DocumentShown } from "./useDocument";
import { toleranceProblem } from "./toleranceProblem";

/** The verb that makes what is wanted; while pages are being made, how far that is and the verb that gives it up. */
export function MakeVerb({ shown, barred }: { shown: DocumentShown | null; barred: boolean }) {
  const choices = useOutput();
  const development = useApp(selectDevelopment);
  const format = useFormat();
  const { state, done, total } = usePdfJob();
  // What was said is about what was asked for then: it goes when anything is asked otherwise.
  const asked = useMemo(() => ({ choices, development, format }), [choices, development, format]);
  const [told, setTold] = useState<{ readonly text: string; readonly of: typeof asked } | null>(null);
  const said = told?.of === asked ? told.text : "";
  const setSaid = (text: string) => setTold({ text, of: asked });
  const { what, tolerance } = choices;
  const ready = !barred && (shown ? shown.outcome.ok : what !== "dxf" || !toleranceProblem(tolerance));

  const make = (event: MouseEvent<HTMLElement>) => {
    // What was typed wrong is never passed over for the number that stood there before.
    const wrong = wrongField(event.currentTarget.closest("dialog"));
    setSaid(wrong ? outputWords.wrongField(wrong.getAttribute("aria-label") ?? "") : "");
    if (wrong) return wrong.focus();
    const title = development.job.title || words.untitled;
    if (shown) {
      const name = documentName(title, shown);
      if (shown.outcome.ok) void startPdf(shown.outcome.pages, { title, fileName: name }).then((made) => made && setSaid(outputWords.saved(name)));
      return;
    }
    saveFile(what as FileWanted, { development, format, choices }).then(
      (names) => setSaid(outputWords.saved(names.join("; "))),
      () => setSaid(outputWords.failed),
    );
  };

  if (state === "making") {
    return (
      <p className="panel-verbs">
        <progress aria-label={outputWords.making(done, total)} value={done} max={total} />
        <span role="status">{outputWords.making(done, total)}</span>
        <button type="button" className="verb" onClick={cancelPdf}>
          {outputWords.cancel}
        </button>
      </p>
    );
  }
  return (
    <p className="panel-verbs">
      <button type="button" className="verb main-verb" disabled={!ready} onClick={make}>
        {outputWords.save[verbOf(what)]}
      </button>
      <span role="status">{state === "failed" ? outputWords.failed : said}</span>
    </p>
  );
}

function wrongField(panel: HTMLElement | null): HTMLElement | undefined {
  return [...(panel?.querySelectorAll<HTMLElement>('[aria-invalid="true"]') ?? [])].find((field) => !field.closest("details:not([open])"));
}

function verbOf(what: Wanted): keyof typeof outputWords.save {
  if (what === "dxf" || what === "svg") return what;
  return what === "table" || what === "list" ? "csv" : "pdf";
}

/** "Lean-to vent, template, A4.pdf" */
function documentName(title: string, { kind, paper }: DocumentShown): string {
  const what = outputWords.fileNames[kind];
  return cutFileName({ title, piece: paper === null ? what : `${what}, ${paper}`, size: null, extension: "pdf" });
}
