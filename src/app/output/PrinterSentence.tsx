import { useState } from "react";
import { outputWords } from "../words/output";
import { Calibration } from "./Calibration";
import { choose, useOutput } from "./choices";
import { PanelChoice } from "./PanelChoice";
import { usePrinters, type Printer } from "./printers";

/** "Printed by [the workshop printer], corrected by +0.33 % across and 0.00 % along the paper." and the way to measure one. */
export function PrinterSentence({ paper, correction }: { paper: string | null; correction: Printer | null }) {
  const said = outputWords;
  const printer = useOutput((choices) => choices.printer);
  const all = usePrinters((state) => state.all);
  const names = [...new Set([...all.map((one) => one.printer), ...(printer === null ? [] : [printer])])];
  const [measuring, setMeasuring] = useState(false);
  const rest = printer === null ? "." : correction ? said.corrected(said.percent(correction.across), said.percent(correction.along)) : paper === null ? "." : said.notOn(paper);
  return (
    <>
      <p className="sentence">
        {said.printed}
        <PanelChoice label={said.printer} value={printer ?? ""} put={(name) => choose({ printer: name === "" ? null : name })}>
          <option value="">{said.noPrinter}</option>
          {names.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </PanelChoice>
        {rest}{" "}
        {!measuring && (
          <button type="button" className="verb" onClick={() => setMeasuring(true)}>
            {said.calibrate.verb}
          </button>
        )}
      </p>
      {measuring && <Calibration paper={paper} correction={correction} close={() => setMeasuring(false)} />}
    </>
  );
}
