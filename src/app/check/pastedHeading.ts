// Do the first lines of what was pasted name the columns, and which of them is for which field?

export interface PastedHeading {
  /** How many lines it takes. */
  readonly rows: number;
  /** Heads of the first of them, none left out. */
  readonly cells: readonly string[];
  /** Whether the first column is one of stations. */
  readonly namesStations: boolean;
  /** By column after `skip`, the column of the table it is for (fields with these keys), null for none; null when the heads do not tell. */
  columnsFor(skip: number, keys: readonly string[], crowded: boolean): (number | null)[] | null;
}

const STATIONS = /^(station|stn|st|element|generator|line|point|no|nr|number|name|where)s?\b\.?/i;

/** Heads by the line of the pattern they mean; what is said of other things is for none. */
const LINES: readonly (readonly [RegExp, string])[] = [
  [/\b(foot|bottom)\b/i, "bottom"], [/\bfrom\b/i, "lower"], [/\bto\b/i, "upper"], [/\b(top|ordinates?|heights?|readings?|read|measured|drawn)\b/i, "top"],
];

/** The heading of cells that may go into `fields` rows. A lone text over one column is one only when it says so, or when the rest just fills the fields. */
export function pastedHeading(cells: readonly (readonly string[])[], fields: number): PastedHeading {
  const worded = (line: readonly string[]) => line.some((cell) => cell !== "") && line.every((cell) => !/\d/.test(cell));
  let rows = 0;
  while (rows < cells.length - 1 && worded(cells[rows] ?? [])) rows++;
  const [head = []] = cells;
  const lone = head.length === 1;
  if (lone && rows > 0 && !isHead(head[0] ?? "") && cells.length - rows !== fields) rows = 0;
  const heads = rows > 0 ? head : [];
  return {
    rows, cells: heads, namesStations: heads.length > 1 && STATIONS.test(heads[0] ?? ""),
    columnsFor(skip, keys, crowded) {
      const lines = keys.map((key) => key.split(" ")[0] ?? "");
      const columns = heads.slice(skip).map((name) => {
        const line = LINES.find(([said]) => said.test(name))?.[1];
        const at = line === undefined ? -1 : lines.indexOf(line);
        return at < 0 ? null : at;
      });
      // Where there is room for all, heads in other words or another language still go by their order.
      const tells = columns.some((column) => column !== null) && new Set(columns.filter((column) => column !== null)).size === columns.filter((column) => column !== null).length;
      return tells && (crowded || columns.every((column) => column !== null)) ? columns : null;
    },
  };
}

/** A word or two, with a unit or without. */
function isHead(text: string): boolean {
  const plain = text.replace(/[[(]?\b(in )?(mm|cm|in|inch|inches)\b[\])]?$/i, "").trim();
  return plain === "" || (plain.split(" ").length <= 2 && !/^not\b/i.test(plain) && (STATIONS.test(plain) || LINES.some(([said]) => said.test(plain))));
}
