import { diagnose, type Diagnosis } from "../../src/core/index";
import { identityOf } from "../../src/core/inspect/drawn/mistake";
import { MISTAKES, drawnWith, withStrays, withoutReason, type DrawnExercise } from "./studentMistakes";

/** What became of the cases of one mistake. */
export interface ConfusionRow {
  readonly mistake: string;
  /** Named alone; named among others that fit alike; not explained; something else named, with what and how often. */
  named: number;
  alike: number;
  unexplained: number;
  readonly wrong: Map<string, number>;
  /** Cases in which even without noise another account fits as well, or better with fewer mistakes: not counted above. */
  notTold: number;
}

const RULE = { tolerance: 1, stepped: false };

/** What a diagnosis names, sorted; several lists when they fit alike. */
export function namesOf(diagnosis: Diagnosis): string[][] {
  switch (diagnosis.kind) {
    case "explained": return [namesIn(diagnosis.explanation)];
    case "alike": return diagnosis.explanations.map(namesIn);
    case "right": return [[]];
    case "too-few": case "unexplained": return [];
  }
}

function namesIn({ mistakes, strays }: Extract<Diagnosis, { kind: "explained" }>["explanation"]): string[] {
  return mistakes.length === 0 && strays.length > 0 ? ["stray"] : mistakes.map(identityOf).sort();
}

/** The row of a kind of case; cases from `from` on until `count` of them have been judged. */
export function confusionRow(mistake: string, caseOf: (n: number) => DrawnExercise | null, count: number, from = 0): ConfusionRow {
  const row: ConfusionRow = { mistake, named: 0, alike: 0, unexplained: 0, wrong: new Map(), notTold: 0 };
  for (let n = from, judged = 0; judged < count && n < from + 40 * count; n++) {
    const one = caseOf(n);
    if (!one) continue;
    const told = same(namesOf(diagnose(one.set, one.exact, RULE)), one.names);
    const outcome = namesOf(diagnose(one.set, one.read, RULE));
    if (!told && mistake !== "something else") row.notTold++;
    else {
      judged++;
      if (same(outcome, one.names)) row.named++;
      else if (outcome.length === 0) row[mistake === "something else" ? "named" : "unexplained"]++;
      else if (outcome.length > 1 && outcome.some((names) => same([names], one.names))) row.alike++;
      else {
        const what = outcome.map((names) => names.join(" + ") || "right").join(" or ");
        row.wrong.set(what, (row.wrong.get(what) ?? 0) + 1);
      }
    }
  }
  return row;
}

function same(outcome: readonly (readonly string[])[], names: readonly string[]): boolean {
  return outcome.length === 1 && JSON.stringify(outcome[0]!.map(shortened)) === JSON.stringify(names.map(shortened));
}

function shortened(name: string): string {
  return name.replace(/^(skipped|repeated).*/, "$1");
}

/** The whole table: right work, each mistake, stray readings, something else, pairs; `count` cases of each. */
export function confusionTable(count: number, noise: number, from = 0): ConfusionRow[] {
  return [
    confusionRow("none", (n) => drawnWith([], n, noise), count, from),
    ...MISTAKES.map((mistake) => confusionRow(mistake.name, (n) => drawnWith([mistake], n, noise), count, from)),
    confusionRow("stray", (n) => withStrays(n, noise), count, from),
    confusionRow("something else", (n) => withoutReason(n), count, from),
    confusionRow("two at once", (n) => drawnWith(twoOf(n), n, noise), 2 * count, from),
  ];
}

function twoOf(n: number): typeof MISTAKES[number][] {
  const first = n % MISTAKES.length;
  const second = (first + 1 + (Math.floor(n / MISTAKES.length) % (MISTAKES.length - 1))) % MISTAKES.length;
  return [MISTAKES[first]!, MISTAKES[second]!];
}
