// A column or a block copied from a spreadsheet, laid into the fields from the one it was pasted in.

export interface Pasted {
  /** Text by the key of its field. */
  readonly texts: Readonly<Record<string, string>>;
  /** Cells for which there was no field, in the order read. */
  readonly surplus: readonly string[];
}

/**
 * Lays rows and columns of a text into `grid` (keys by row and column) from the field with key `from`. Null for a single cell, which
 * is pasted as usual, and for a field that is not in the grid. Empty cells leave their field as it is.
 */
export function pasted(text: string, grid: readonly (readonly string[])[], from: string): Pasted | null {
  const cells = text.replace(/\r\n?/g, "\n").replace(/\n+$/, "").split("\n").map((line) => line.split("\t").map((cell) => cell.trim()));
  if (cells.length === 1 && cells[0]?.length === 1) return null;
  const row = grid.findIndex((keys) => keys.includes(from));
  const column = grid[row]?.indexOf(from) ?? -1;
  if (column < 0) return null;
  const texts: Record<string, string> = {};
  const surplus: string[] = [];
  cells.forEach((line, i) => line.forEach((cell, k) => {
    const key = grid[row + i]?.[column + k];
    if (cell === "") return;
    if (key === undefined) surplus.push(cell);
    else texts[key] = cell;
  }));
  return { texts, surplus };
}
