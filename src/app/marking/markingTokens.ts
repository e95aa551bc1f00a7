import type { Job, Marking, MarkingItem } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { optionsOf, type ChoiceToken, type NumberToken } from "../describe/token";
import { markingWords } from "../words/marking";

// The fields of the scheme: what is allowed, and the marks of each item with what decides them.

/** What is allowed: lengths, angles, the way the girth is found. */
export function ruleTokens({ tolerance, angle, girth }: Marking, trade: TradeWords) {
  const number = (name: "tolerance" | "angle", quantity: NumberToken["quantity"], value: number): NumberToken => ({
    kind: "number", key: `marking.${name}`, field: `marking.${name}`, quantity, label: markingWords.fields[name], value, put: (job, to) => put(job, { [name]: to }),
  });
  return {
    tolerance: number("tolerance", "length", tolerance),
    angle: number("angle", "angle", angle),
    girth: choice("marking.girth", markingWords.fields.girth(trade), girth, markingWords.girthRules, (job, to) => put(job, { girth: to })),
  };
}

/** The marks of an item, whether they are given or taken off, and what decides. */
export function itemTokens({ id, marks, by, text }: MarkingItem, trade: TradeWords) {
  const key = `marking.items.${id}`;
  const name = text || markingWords.untitled;
  const size = (sign: number): NumberToken["put"] => (job, value) => withItem(job, id, { marks: sign * Math.abs(value) });
  return {
    marks: { kind: "number", key: `${key}.marks`, field: `${key}.marks`, quantity: "count", label: markingWords.fields.marks(name), value: Math.abs(marks), put: size(marks < 0 ? -1 : 1) } satisfies NumberToken,
    sign: choice(`${key}.sign`, markingWords.fields.sign(name), marks < 0 ? "off" : "given", markingWords.signs, (job, to) => withItem(job, id, { marks: Math.abs(marks) * (to === "off" ? -1 : 1) })),
    by: choice(`${key}.by`, markingWords.fields.by(name), by, markingWords.deciders(trade), (job, to) => withItem(job, id, { by: to })),
  };
}

/** The job with an item of its scheme changed. */
export function withItem(job: Job, id: string, change: Partial<MarkingItem>): Job {
  return put(job, { items: job.marking.items.map((item) => (item.id === id ? { ...item, ...change } : item)) });
}

/** The job with its scheme changed. */
export function put(job: Job, change: Partial<Marking>): Job {
  return { ...job, marking: { ...job.marking, ...change } };
}

function choice<K extends string>(key: string, label: string, value: K, table: Readonly<Record<K, string>>, change: (job: Job, to: K) => Job): ChoiceToken {
  return { kind: "choice", key, field: key, label, value, options: optionsOf(table), put: (job, to) => change(job, to as K) };
}
