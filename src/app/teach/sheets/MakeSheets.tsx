import { useEffect } from "react";
import { cutFileName } from "../../files/cutFileName";
import { cancelPdf, startPdf, usePdfJob } from "../../print/pdfJob";
import { selectJob } from "../../store/select";
import { useApp } from "../../store/store";
import { words } from "../../words/interface";
import { sheetsWords as said } from "../../words/sheets";
import { rememberScale } from "./rememberScale";
import type { LaidOut } from "./useLessons";
import { useSheets } from "./sheetChoices";

/** The verb that makes one PDF of all sheets; while it is made, how far that is and the verb that gives it up. */
export function MakeSheets({ laid }: { laid: readonly LaidOut[] | null }) {
  const { state, done, total } = usePdfJob();
  const job = useApp(selectJob);
  const title = job.title || words.untitled;
  const paper = useSheets((choices) => choices.paper);
  useEffect(() => cancelPdf, []);
  if (state === "making") {
    return (
      <p className="sheets-verbs">
        <progress aria-label={said.making(done, total)} value={done} max={total} />
        <span role="status">{said.making(done, total)}</span>
        <button type="button" className="verb" onClick={cancelPdf}>
          {said.cancel}
        </button>
      </p>
    );
  }
  const pages = laid?.flatMap(({ outcome }) => (outcome.ok ? outcome.pages : [])) ?? [];
  const ready = laid !== null && pages.length > 0 && laid.every(({ outcome }) => outcome.ok);
  const make = async () => {
    const saved = await startPdf(pages, { title, fileName: cutFileName({ title, piece: `${said.file}, ${paper}`, size: null, extension: "pdf" }) });
    if (saved) rememberScale(job, drawnScaleOf(laid ?? []));
  };
  const told = state === "failed" ? said.failed : laid === null ? said.laying : laid.length === 0 ? said.nothing : "";
  return (
    <p className="sheets-verbs">
      <button type="button" className="verb main-verb" disabled={!ready} onClick={() => void make()}>
        {said.save}
      </button>
      <span role="status">{told}</span>
    </p>
  );
}

/** The scale of the sheets on which the piece is drawn; null when there are none among them. */
function drawnScaleOf(laid: readonly LaidOut[]): number | null {
  return laid.reduce<number | null>((scale, { kind, outcome }) => scale ?? (outcome.ok && (kind === "question" || kind === "started" || kind === "key") ? outcome.scale : null), null);
}
