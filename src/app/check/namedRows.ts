// Is the first of pasted columns the stations' numbers or names, and which row of the table does each mean?

export interface GridRow {
  /** Keys of its fields, by column. */
  readonly keys: readonly string[];
  /** What it may be called, in small letters; a station by what follows "station": "0", "0 again". */
  readonly names: readonly string[];
}

export interface NamedRows {
  /** The row of the table by the row of the column; null for one that means none. */
  readonly at: readonly (number | null)[];
  /** Whether the names decided, or they only count the lines, from the field on in which they were pasted. */
  readonly by: "name" | "order";
  /** Whether it can be taken the other way too. */
  readonly either: boolean;
  readonly first: string;
  readonly last: string;
}

/** A column is one of names when so many parts of its cells are. */
const MOST = 0.75;

/**
 * The rows meant by a column of names; null when it is none. `from`: the row it was pasted in; `sure`: there is no other field it could
 * belong to; `asked`: which way it is to be taken, when both can be.
 */
export function namedRows(column: readonly string[], rows: readonly GridRow[], from: number, sure: boolean, asked: NamedRows["by"] | null): NamedRows | null {
  const cells = column.filter((cell) => cell !== "");
  const [first = "", last = ""] = [cells[0], cells.at(-1)];
  if (cells.length < 2) return null;
  const at = byName(column, rows);
  const found = at.filter((row, i) => row !== null && column[i] !== "");
  const counts = cells.every((cell, i) => /^\d+$/.test(cell) && Number(cell) === Number(first) + i);
  const worded = cells.every((cell) => /^\p{L}/u.test(cell));
  const named = found.length >= MOST * cells.length && (sure || worded || (counts && cells.length > 2));
  const inOrder = { at: column.map((_, i) => (from + i < rows.length ? from + i : null)), by: "order" as const, first, last };
  // Lines counted from 1, put into the first field: they may be no stations' numbers.
  const counted = counts && first === "1" && at[0] !== from;
  if (named && !(counted && (asked ?? "order") === "order")) return { at, by: "name", either: counted, first, last };
  if (counted && (named || sure)) return { ...inOrder, either: named && found.length === cells.length };
  return worded && sure ? { ...inOrder, either: false } : null;
}

/** What may stand before a station's number. */
const BEFORE = /^(station|stn|st|element|generator|line|point|no|nr|[sep#])\.? ?(?=\d)/;

/** Each further down than the one before; a last one without a name comes after it. */
function byName(column: readonly string[], rows: readonly GridRow[]): (number | null)[] {
  let last = -1;
  return column.map((cell, i) => {
    const said = cell.toLowerCase().replace(/\s+/g, " ");
    const name = said.replace(BEFORE, "");
    const named = rows.findIndex(({ names }, row) => row > last && (names.includes(name) || names.includes(said)));
    const row = cell !== "" ? named : i === column.length - 1 && last + 1 < rows.length ? last + 1 : -1;
    if (row < 0) return null;
    last = row;
    return row;
  });
}
