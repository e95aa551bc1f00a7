import type { Clause } from "./token";

/**
 * Remembers clauses from call to call: those that say what they said the last time stay the same objects, so that nothing of them is
 * drawn anew. What a token puts depends on nothing but what it says and the job it is given.
 */
export function clauseMemory(): (clauses: readonly Clause[]) => readonly Clause[] {
  let last: ReadonlyMap<string, { readonly clause: Clause; readonly said: string }> = new Map();
  return (clauses) => {
    const now = clauses.map((clause) => {
      // Functions are left out of it.
      const said = JSON.stringify(clause);
      const before = last.get(clause.id);
      return before?.said === said ? before : { clause, said };
    });
    last = new Map(now.map((one) => [one.clause.id, one]));
    return now.map(({ clause }) => clause);
  };
}
