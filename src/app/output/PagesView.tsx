import type { Page } from "../../drawing/sheets/page";
import type { Section } from "../../drawing/sheets/section";
import { capital } from "../../drawing/tradeWords";
import { scaleText } from "../../drawing/sheets/scales";
import { PageView } from "../print/PageView";
import type { Format } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import { outputWords } from "../words/output";

/** Pages shown in small of each part; the rest are counted. */
const shown = 3;

/** What will come out: each part of the document in words, and its first pages in small, the map of the tiles first. */
export function PagesView({ sections }: { sections: readonly Section[] }) {
  const format = useFormat();
  return sections.map((section, i) => (
    <section key={i} className="outcome" aria-label={section.title}>
      <p>{sectionText(section, format)}</p>
      <div className="previews">
        {section.pages.slice(0, shown).map((page, n) => (
          <PageView key={n} page={page} />
        ))}
        {section.pages.length > shown && <p>{outputWords.outcome.more(section.pages.length - shown)}</p>}
      </div>
    </section>
  ));
}

function sectionText({ kind, title: name, layout, pages, paper, columns, rows, scale }: Section, format: Format): string {
  const { outcome } = outputWords;
  const title = capital(name);
  const sheet = sheetOf(paper, pages[0], format);
  if (layout === "tiles") return outcome.tiles(title, pages.filter(({ name }) => isTile(name)).length, sheet, columns, rows);
  const drawn = kind === "parts" ? "" : scaleText(scale);
  return pages.length === 1 ? outcome.one(title, sheet, drawn) : outcome.pages(title, pages.length, sheet, drawn);
}

/** A sheet of the pattern itself is named by row and column; others are covers and the map. */
function isTile(name: string): boolean {
  return /^[A-Z]+\d+$/.test(name);
}

/** "A4, 210 × 297 mm"; a paper that is called by its size is not given it twice. */
function sheetOf(paper: string, page: Page | undefined, format: Format): string {
  if (!page) return paper;
  const size = `${format.length(page.width)} × ${format.length(page.height)} ${format.unit}`;
  return paper.includes("×") && format.unit === "mm" ? size : `${paper}, ${size}`;
}
