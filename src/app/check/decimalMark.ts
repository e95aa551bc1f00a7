// Does a comma in pasted figures part the decimals or the thousands? "1,250" may be either; the figures beside it tell, else it parts
// decimals. In a place where commas do, the same is asked of points.

export interface MarkRead {
  readonly sign: "," | ".";
  readonly as: "decimal" | "thousands";
  /** One of the figures, as pasted and as read. */
  readonly example: string;
  readonly read: number;
  /** Whether all of them can be read the other way too. */
  readonly either: boolean;
}

/** How the mark of figures is read: as asked, or as the others tell; null when fewer than half of them bear it. */
export function markRead(cells: readonly string[], sign: "," | ".", asked: MarkRead["as"] | null): MarkRead | null {
  const marked = cells.filter((cell) => cell.includes(sign));
  const [example] = marked;
  if (example === undefined || 2 * marked.length < cells.length) return null;
  const either = marked.every((cell) => thousands(sign).test(cell));
  const as = either ? (asked ?? likelier(marked, cells.filter((cell) => !cell.includes(sign)), sign)) : "decimal";
  return { sign, as, example, read: value(example, sign, as), either };
}

/** A cell as it is put into its field. */
export function markedText(cell: string, mark: MarkRead | null): string {
  return mark?.as === "thousands" ? cell.replaceAll(mark.sign, "") : cell;
}

function thousands(sign: string): RegExp {
  return sign === "," ? /^[+−-]?\d{1,3}(,\d{3})+(\.\d+)?$/ : /^[+−-]?\d{1,3}(\.\d{3})+(,\d+)?$/;
}

/** Figures of one drawing are of about one size. */
function likelier(marked: readonly string[], others: readonly string[], sign: "," | "."): MarkRead["as"] {
  if (marked.some((cell) => cell.split(sign).length > 2 || /[.,].*[.,]/.test(cell))) return "thousands";
  const sizes = others.map((cell) => Math.log(Math.abs(Number(cell.replace(",", "."))))).filter(Number.isFinite);
  if (sizes.length === 0) return "decimal";
  const usual = mean(sizes);
  const off = (as: MarkRead["as"]) => Math.abs(mean(marked.map((cell) => Math.log(Math.abs(value(cell, sign, as))))) - usual);
  return off("thousands") < off("decimal") ? "thousands" : "decimal";
}

function value(cell: string, sign: "," | ".", as: MarkRead["as"]): number {
  const plain = as === "thousands" ? cell.replaceAll(sign, "") : cell;
  return Number(plain.replace(",", ".").replace("−", "-"));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}
