import { readFileSync, writeFileSync } from "node:fs";
import { confusionRow, confusionTable, type ConfusionRow } from "../support/confusion";
import { drawnWith } from "../support/studentMistakes";

// `npm run diagnosis`: the confusion table of the diagnosis over seeded exercises, written between two marks of docs/accuracy.md.

const CASES = 50;
const START = "<!-- diagnosis: begin -->";
const END = "<!-- diagnosis: end -->";

const from = 100_000;
const rows = [...confusionTable(CASES, 0.5, from), confusionRow("none, hand unsure (±1.2 mm)", (n) => drawnWith([], n, 1.2), 2 * CASES, from)];
const page = new URL("../../docs/accuracy.md", `file://${process.cwd()}/.cache/diagnosis/`);
const text = readFileSync(page, "utf8");
const [before, after] = [text.indexOf(START), text.indexOf(END)];
if (before < 0 || after < before) throw new Error(`docs/accuracy.md lacks ${START} or ${END}`);
const table = tableOf(rows);
writeFileSync(page, `${text.slice(0, before + START.length)}\n${table}\n${text.slice(after)}`);
console.log(table);

function tableOf(all: readonly ConfusionRow[]): string {
  const lines = all.map(({ mistake, named, alike, unexplained, wrong, notTold }) => {
    const others = [...wrong].filter(([what]) => !mistake.startsWith("none, hand") || what !== "stray");
    const right = mistake.startsWith("none, hand") ? named + unexplained + (wrong.get("stray") ?? 0) : named;
    const misnamed = others.reduce((sum, [, times]) => sum + times, 0);
    const judged = right + alike + misnamed + (mistake.startsWith("none, hand") ? 0 : unexplained);
    const what = others.map(([name, times]) => `${name} (${times})`).join(", ");
    return `| ${mistake} | ${judged} | ${right} | ${alike} | ${mistake.startsWith("none, hand") ? 0 : unexplained} | ${misnamed}${what ? `: ${what}` : ""} | ${notTold} |`;
  });
  return ["| drawn | judged | told rightly | with others | not explained | told wrongly | not to be told |", "|---|---|---|---|---|---|---|", ...lines].join("\n");
}
