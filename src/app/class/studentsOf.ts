import type { Columns } from "./guessedColumns";

export interface Student {
  readonly name: string;
  readonly group: string;
}

/** The students of a list, in its order; rows without a name are left out. */
export function studentsOf(rows: readonly (readonly string[])[], { heads, name, second, group }: Columns): Student[] {
  const cell = (cells: readonly string[], column: number | null) => (column === null ? "" : (cells[column] ?? ""));
  return rows.slice(heads ? 1 : 0).map((cells) => ({ name: `${cell(cells, name)} ${cell(cells, second)}`.trim(), group: cell(cells, group) })).filter((one) => one.name !== "");
}

/** Names that stand in the list more than once in the same class, each once. */
export function sharedNames(students: readonly Student[]): string[] {
  const keys = students.map(({ name, group }) => `${name.toLowerCase()}\n${group}`);
  const again = new Set(keys.filter((key, i) => keys.indexOf(key) !== i));
  return [...new Set(students.filter((_, i) => again.has(keys[i] ?? "")).map(({ name }) => name))];
}

/** Names with letters the printed lettering lacks: it has Latin, Greek and Cyrillic ones. */
export function unprintableNames(students: readonly Student[]): string[] {
  return students.map(({ name }) => name).filter((name) => /[^\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}\p{Script=Inherited}]|\p{Extended_Pictographic}/u.test(name.replace(/[0-9#*©®™]/g, "")));
}
