// An allowance in words and figures: what it is, what it is made of, what that comes to.

import type { Allowance } from "../../core/index";
import type { Figures } from "../figures";
import type { BlankWords } from "./blankWords";

/** "hem 6"; "groove 1.5 × 6 = 9"; "wired edge 2.5 × 3.2 + 0.8 = 8.8". */
export function allowanceSum({ kind, parts, width }: Allowance, figures: Figures, words: BlankWords): string {
  const name = words.allowance[kind];
  const total = figures.length(width);
  const terms = parts.map(({ factor, size }) => (factor === 1 ? figures.length(size) : `${factorText(factor)} × ${figures.length(size)}`));
  const [only] = terms;
  return terms.length === 1 && only === total ? `${name} ${total}` : `${name} ${terms.join(" + ")} = ${total}`;
}

function factorText(factor: number): string {
  return String(Math.round(factor * 1000) / 1000);
}
