import type { Clause, Token } from "./token";

interface Said<Thing> {
  readonly one: Thing;
  /** What it says; functions are left out of it. */
  readonly said: string;
}

/**
 * Remembers clauses from call to call: those that say what they said the last time stay the same objects, and so do the tokens of
 * others, so that nothing of them is drawn anew. What a token puts depends on nothing but what it says and the job it is given.
 */
export function clauseMemory(): (clauses: readonly Clause[]) => readonly Clause[] {
  let last: ReadonlyMap<string, { readonly clause: Said<Clause>; readonly tokens: readonly Said<Token>[] }> = new Map();
  return (clauses) => {
    const now = clauses.map((clause) => {
      const before = last.get(clause.id);
      const tokens = clause.tokens.map((token, i) => reused(before?.tokens[i], token));
      return { clause: reused(before?.clause, { ...clause, tokens: tokens.map(({ one }) => one) }), tokens };
    });
    last = new Map(now.map((one) => [one.clause.one.id, one]));
    return now.map(({ clause }) => clause.one);
  };
}

function reused<Thing>(before: Said<Thing> | undefined, one: Thing): Said<Thing> {
  const said = JSON.stringify(one);
  return before?.said === said ? before : { one, said };
}
