/** A drawing's text and numbers apart: every number replaced by "#". */
export interface Normalised {
  readonly text: string;
  readonly numbers: readonly number[];
}

const NUMBER = /-?\d+(?:\.\d+)?/g;

/** One element a line, so that a diff shows what moved. */
export function normalised(svg: string): Normalised {
  return { text: svg.replace(NUMBER, "#"), numbers: [...svg.matchAll(NUMBER)].map(([number]) => Number(number)) };
}

/** The drawing as it is kept: numbers to two places. */
export function kept(svg: string): string {
  return svg.replace(/-?\d+\.\d{3,}/g, (number) => String(Math.round(Number(number) * 100) / 100 + 0));
}

/** The first place where two drawings differ by more than `tolerance` (mm) or in any word, or null. */
export function firstDifference(drawn: string, golden: string, tolerance: number): string | null {
  const [a, b] = [drawn.split("\n"), golden.split("\n")];
  for (let line = 0; line < Math.max(a.length, b.length); line++) {
    const [one, other] = [a[line] ?? "", b[line] ?? ""];
    const [n, m] = [normalised(one), normalised(other)];
    const isSame = n.text === m.text && n.numbers.length === m.numbers.length && n.numbers.every((value, i) => Math.abs(value - (m.numbers[i] ?? NaN)) <= tolerance);
    if (!isSame) return `line ${line + 1}\n  drawn:  ${one}\n  golden: ${other}`;
  }
  return null;
}
