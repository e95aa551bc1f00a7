import { type MarkRead, markRead, markedText } from "./decimalMark";
import { type GridRow, type NamedRows, namedRows } from "./namedRows";
import { pastedCells } from "./pastedCells";
import { pastedHeading } from "./pastedHeading";

// A column or a block copied from a spreadsheet, laid into the fields from the one it was pasted in, or into those its first column names.

export interface Pasted {
  /** Text by the key of its field. */
  readonly texts: Readonly<Record<string, string>>;
  /** Cells for which there was no field, in the order read. */
  readonly surplus: readonly string[];
  /** The heads that were left out, and those of columns left out for their heads. */
  readonly heading: readonly string[];
  readonly leftOut: readonly string[];
  /** What the first column was taken for, when not for readings. */
  readonly named: Omit<NamedRows, "at"> | null;
  readonly mark: MarkRead | null;
}

/** What is to be done where a text can be taken in two ways; null: what is likelier. */
export interface PasteWish {
  readonly by: NamedRows["by"] | null;
  readonly mark: MarkRead["as"] | null;
  /** Whether the one who pastes writes a decimal comma. */
  readonly comma: boolean;
}

export const asLikely: PasteWish = { by: null, mark: null, comma: false };

/**
 * Lays rows and columns of a text into the table (`blocks` of rows with the same columns) from the field with key `from`. Null for a
 * single cell, which is pasted as usual, and for a field that is not in the table. Empty cells leave their field as it is.
 */
export function pasted(text: string, blocks: readonly (readonly GridRow[])[], from: string, wish: PasteWish = asLikely): Pasted | null {
  const cells = pastedCells(text);
  if (cells.length === 1 && cells[0]?.length === 1) return null;
  const grid = blocks.flat();
  const row = grid.findIndex(({ keys }) => keys.includes(from));
  const column = grid[row]?.keys.indexOf(from) ?? -1;
  if (column < 0) return null;
  const width = cells.reduce((most, { length }) => Math.max(most, length), 0);
  const room = (grid[row]?.keys.length ?? 0) - column;
  const head = pastedHeading(cells, grid.length - row);
  const body = cells.slice(head.rows);
  const first = body.map(([cell = ""]) => cell);
  // Names mean rows of the block in which it was pasted; from the first on, those of the next too.
  const block = blocks.findIndex((rows) => rows.some(({ keys }) => keys.includes(from)));
  const before = blocks.slice(0, block).flat().length;
  const own = blocks.slice(block, block === 0 ? 2 : block + 1).flat();
  const named = width > 1 ? namedRows(first, own, row - before, width > room || head.namesStations, wish.by) : null;
  const values = named ? body.map((line) => line.slice(1)) : body;
  const columns = head.columnsFor(named ? 1 : 0, own.at(-1)?.keys ?? [], width > room);
  const laid = (i: number) => (named ? (named.at[i] === null ? null : before + (named.at[i] ?? 0)) : row + i);
  const key = (i: number, k: number) => {
    const at = laid(i);
    return at === null ? undefined : grid[at]?.keys[columns ? (columns[k] ?? -1) : column + k];
  };
  const taken = values.flatMap((line, i) => line.flatMap((cell, k) => (cell === "" || (columns && columns[k] === null) ? [] : [{ cell, key: key(i, k) }])));
  const figures = taken.map(({ cell }) => cell);
  const marks = ([",", ...(wish.comma ? ["." as const] : [])] as const).flatMap((sign) => markRead(figures, sign, wish.mark) ?? []);
  const mark = marks.find(({ either }) => either) ?? marks[0] ?? null;
  return {
    texts: Object.fromEntries(taken.flatMap(({ cell, key: into }) => (into === undefined ? [] : [[into, markedText(cell, mark)]]))),
    surplus: taken.flatMap(({ cell, key: into }) => (into === undefined ? [cell] : [])),
    heading: head.cells, leftOut: columns ? head.cells.slice(named ? 1 : 0).filter((_, k) => columns[k] === null) : [],
    named, mark,
  };
}
