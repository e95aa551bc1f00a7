import { useEffect, useMemo, useState } from "react";
import { createPortal } from "react-dom";
import { PAPERS } from "../../drawing/papers";
import { sheets, type SheetSet } from "../../drawing/sheet";
import { sheetWords } from "../../drawing/sheetWords";
import { useFormat } from "../quantity/useFormat";
import { Panel } from "../screen/Panel";
import { SettingField } from "../settings/SettingField";
import { selectDevelopment } from "../store/select";
import { set, useSettings } from "../store/settings";
import { useApp } from "../store/store";
import { panelWords } from "../words/panels";
import { PageView } from "./PageView";
import { setPageSize } from "./pageSize";

const auto = "auto";
const previews = 12;

/** What will come out of the printer, on which paper, and what to watch for. */
export function PrintPanel() {
  const development = useApp(selectDevelopment);
  const family = useSettings((settings) => settings.paper);
  const [paper, setPaper] = useState<string>(auto);
  const figures = useFormat();
  const chosen = PAPERS.find((one) => one.family === family && one.name === paper);
  const sheetSet = useMemo(() => sheets(development, { family, figures, words: sheetWords(figures.trade), ...(chosen ? { paper: chosen.name } : {}) }), [development, family, figures, chosen]);
  const { print } = panelWords;
  const papers = PAPERS.filter((one) => one.family === family);
  useEffect(() => setPageSize(sheetSet.pages[0]), [sheetSet]);
  return (
    <Panel title={print.title}>
      <div className="settings">
        <SettingField label={print.family} value={family} options={{ iso: print.iso, us: print.us }} choose={(value) => set("paper", value === "us" ? "us" : "iso")} />
        <SettingField
          label={print.paper}
          value={chosen ? paper : auto}
          options={{ [auto]: print.auto, ...Object.fromEntries(papers.map((one) => [one.name, one.name])) }}
          choose={setPaper}
        />
      </div>
      <p className="outcome">{outcome(sheetSet)}</p>
      <div className="previews">
        {sheetSet.pages.slice(0, previews).map((page) => (
          <PageView key={page.name} page={page} preview />
        ))}
      </div>
      <ul className="cautions">
        {print.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <button type="button" className="verb main-verb" onClick={() => window.print()}>
        {print.print}
      </button>
      {createPortal(
        <div className="print-sheets" aria-hidden="true">
          {sheetSet.pages.map((page) => (
            <PageView key={page.name} page={page} />
          ))}
        </div>,
        document.body,
      )}
    </Panel>
  );
}

function outcome(of: SheetSet): string {
  const { print } = panelWords;
  const way = of.landscape ? print.landscape : print.portrait;
  return of.kind === "one" ? print.one(of.paper, way) : print.tiles(of.pages.length, of.paper);
}
