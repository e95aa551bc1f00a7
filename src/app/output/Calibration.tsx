import { useId, useState } from "react";
import type { Problem } from "../../core/index";
import { calibrationLengths, type CalibrationLengths } from "../../drawing/sheets/calibrationSection";
import { correctionFrom } from "../../drawing/sheets/correctionFrom";
import { documentPages } from "../../drawing/sheets/documentPages";
import { setupProblems } from "../../drawing/sheets/setupProblems";
import type { PageSetup } from "../../drawing/sheets/setup";
import { fileName } from "../files/fileName";
import { startPdf } from "../print/pdfJob";
import { useFormat } from "../quantity/useFormat";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { outputWords } from "../words/output";
import { choose, setupOf, useOutput } from "./choices";
import { PanelNumber } from "./PanelNumber";
import { forgetPrinter, keepPrinter, type Printer } from "./printers";
import { documentOptions } from "./useDocument";

/** Two steps: print the rulers, type what they measure; what follows is kept for the printer and paper. */
export function Calibration({ paper, correction, close }: { paper: string | null; correction: Printer | null; close: () => void }) {
  const said = outputWords.calibrate;
  const choices = useOutput();
  const development = useApp(selectDevelopment);
  const format = useFormat();
  const title = useId();
  const [name, setName] = useState(choices.printer ?? "");
  const setup: PageSetup = setupOf(choices);
  const lengths = setupProblems(setup).length > 0 ? null : calibrationLengths(setup);
  const [measured, setMeasured] = useState<Partial<CalibrationLengths>>({});
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [message, setMessage] = useState("");
  if (!lengths || paper === null) return null;
  const printer = name.trim();
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  const problem = (axis: keyof CalibrationLengths) => problems.find((one) => one.field === `correction.${axis}`);

  const savePage = () => {
    const made = documentPages(development, "calibration", setup, documentOptions(development, choices, format));
    if (made.ok) void startPdf(made.pages, { title: said.title, fileName: fileName(`${printer || said.title} ${paper}`, "pdf") });
  };
  const keep = () => {
    if (printer === "") return setMessage(said.unnamed);
    const found = correctionFrom(printer, lengths, { ...lengths, ...measured });
    setProblems(found.ok ? [] : found.problems);
    if (!found.ok) return setMessage("");
    keepPrinter({ ...found.correction, paper });
    choose({ printer });
    setMessage(said.kept(printer, paper));
  };

  return (
    <section className="calibration" aria-labelledby={title}>
      <h3 id={title}>{said.title}</h3>
      <p>{said.first}</p>
      <p className="sentence">
        <label className="setting">
          <span>{said.name}</span>
          <input className="printer-name" value={name} maxLength={60} autoComplete="off" onChange={(event) => setName(event.target.value)} />
        </label>{" "}
        <button type="button" className="verb" onClick={savePage}>
          {said.page}
        </button>
      </p>
      <p>{said.second}</p>
      <p className="sentence">
        {said.across(length(lengths.across))}
        <PanelNumber label={said.acrossField} value={measured.across ?? lengths.across} put={(across) => setMeasured({ ...measured, across })} problem={problem("across")} />
        {said.along(length(lengths.along))}
        <PanelNumber label={said.alongField} value={measured.along ?? lengths.along} put={(along) => setMeasured({ ...measured, along })} problem={problem("along")} tail="." />
      </p>
      <p className="panel-verbs">
        <button type="button" className="verb" onClick={keep}>
          {said.keep}
        </button>
        {correction && (
          <button
            type="button"
            className="verb"
            onClick={() => {
              forgetPrinter(correction);
              choose({ printer: null });
            }}
          >
            {said.forget}
          </button>
        )}
        <button type="button" className="verb" onClick={close}>
          {said.close}
        </button>
        <span role="status">{message}</span>
      </p>
    </section>
  );
}
