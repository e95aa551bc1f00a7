// On which paper, and which way about, can a piece lie? The candidates in the order they are tried.

import { BAND, LEAST_FIELD, mostOverFoot } from "./pageBands";
import { papersOf, paperNamed } from "./papers";
import type { NamedPaper } from "./section";
import { OWN_SIZE, type PageSetup } from "./setup";

export interface Layout {
  readonly paper: NamedPaper;
  readonly landscape: boolean;
}

/** What must go on a page beside its bands and margins, mm. */
export interface Needed {
  readonly width: number;
  readonly height: number;
}

/** Layouts of a chosen paper; those of a roll are cut to take `needed` as it is, the shorter first. */
export function layoutsFor(setup: PageSetup, needed: Needed): Layout[] {
  const { paper } = setup;
  if (paper.kind === "roll") return rollLayouts(paper.width, setup, needed);
  const papers = paper.kind === "smallest" ? papersOf(paper.family) : [paper.kind === "named" ? paperNamed(paper.name) : ownPaper(paper.width, paper.height)];
  return papers.flatMap((one) => waysOf(setup.orientation).map((landscape) => ({ paper: one, landscape })));
}

/** Layouts of the one paper that tiles are laid on. */
export function tileLayouts(setup: PageSetup, needed: Needed): Layout[] {
  const layouts = layoutsFor(setup, needed);
  return layouts.filter(({ paper }) => setup.paper.kind === "roll" || paper.name === layouts[0]?.paper.name);
}

/** Ways to lay the paper, upright first. */
export function waysOf(orientation: PageSetup["orientation"]): boolean[] {
  return orientation === "best" ? [false, true] : [orientation === "landscape"];
}

function ownPaper(width: number, height: number): NamedPaper {
  return { name: sizeName(width, height), width, height };
}

/** "500 × 700 mm" */
function sizeName(width: number, height: number): string {
  return `${Number(width.toFixed(1))} × ${Number(height.toFixed(1))} mm`;
}

function rollLayouts(width: number, { orientation, margin, correction }: PageSetup, needed: Needed): Layout[] {
  const along = Math.max(1, correction?.along ?? 1);
  return waysOf(orientation).map((landscape) => {
    const over = landscape ? 0 : mostOverFoot(width - 2 * margin);
    const field = Math.max(LEAST_FIELD, BAND + over + (landscape ? needed.width : needed.height));
    const length = Math.min(OWN_SIZE.max, Math.ceil(field * along + 2 * margin));
    return { paper: ownPaper(width, length), landscape };
  }).sort((a, b) => a.paper.height - b.paper.height);
}
