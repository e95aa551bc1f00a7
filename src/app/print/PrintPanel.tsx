import { useEffect, useMemo, useState } from "react";
import { documentPages } from "../../drawing/sheets/documentPages";
import { papersOf } from "../../drawing/sheets/papers";
import type { Section } from "../../drawing/sheets/section";
import { DEFAULT_SETUP, type PageSetup } from "../../drawing/sheets/setup";
import { sheetWords } from "../../drawing/sheets/sheetWords";
import { fileName } from "../files/fileName";
import { useFormat } from "../quantity/useFormat";
import { Panel } from "../screen/Panel";
import { SettingField } from "../settings/SettingField";
import { selectDevelopment } from "../store/select";
import { set, useSettings } from "../store/settings";
import { useApp } from "../store/store";
import { panelWords } from "../words/panels";
import { PageView } from "./PageView";
import { cancelPdf, startPdf, usePdfJob } from "./pdfJob";

const auto = "auto";
const previews = 12;

/** What will come out of the printer, on which paper, and what to watch for; made as a PDF. */
export function PrintPanel() {
  const development = useApp(selectDevelopment);
  const family = useSettings((settings) => settings.paper);
  const [paper, setPaper] = useState<string>(auto);
  const figures = useFormat();
  const chosen = papersOf(family).find((one) => one.name === paper);
  const outcome = useMemo(() => {
    const setup: PageSetup = { ...DEFAULT_SETUP, paper: chosen ? { kind: "named", name: chosen.name } : { kind: "smallest", family } };
    return documentPages(development, "template", setup, { figures, words: sheetWords(figures.trade), date: new Date().toLocaleDateString() });
  }, [development, family, figures, chosen]);
  const { print } = panelWords;
  const pages = outcome.ok ? outcome.pages : [];
  useEffect(() => cancelPdf, []);
  return (
    <Panel title={print.title}>
      <div className="settings">
        <SettingField label={print.family} value={family} options={{ iso: print.iso, us: print.us }} choose={(value) => set("paper", value === "us" ? "us" : "iso")} />
        <SettingField
          label={print.paper}
          value={chosen ? paper : auto}
          options={{ [auto]: print.auto, ...Object.fromEntries(papersOf(family).map((one) => [one.name, one.name])) }}
          choose={setPaper}
        />
      </div>
      {outcome.ok && outcome.sections.map((section, i) => <p className="outcome" key={i}>{sectionText(section)}</p>)}
      <div className="previews">
        {pages.slice(0, previews).map((page, i) => (
          <PageView key={i} page={page} />
        ))}
      </div>
      <ul className="cautions">
        {print.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <PdfVerbs start={() => void startPdf(pages, { title: development.job.title, fileName: fileName(development.job.title, "pdf") })} />
    </Panel>
  );
}

function PdfVerbs({ start }: { start: () => void }) {
  const { state, done, total } = usePdfJob();
  const { print } = panelWords;
  return (
    <p className="pdf-verbs">
      {state === "making" ? (
        <button type="button" className="verb main-verb" onClick={cancelPdf}>{print.cancel}</button>
      ) : (
        <button type="button" className="verb main-verb" onClick={start}>{print.print}</button>
      )}
      <span role="status">{state === "making" ? print.making(done, total) : state === "failed" ? print.failed : ""}</span>
    </p>
  );
}

function sectionText(of: Section): string {
  const { print } = panelWords;
  const way = of.landscape ? print.landscape : print.portrait;
  return of.layout === "one" ? print.one(of.paper, way) : print.tiles(of.pages.length, of.paper);
}
