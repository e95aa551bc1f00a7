// Which columns of a class list hold what, before anybody says so.

export interface Columns {
  /** Whether the first row names the columns. */
  readonly heads: boolean;
  readonly name: number;
  /** A second part of the name, such as the first name beside the surname; null for none. */
  readonly second: number | null;
  /** The class or group; null for none. */
  readonly group: number | null;
}

const NAME = /name|student|pupil|learner|schüler|élève|alumn|alunn/i;
const FIRST = /first|fore|given|vorname|prénom|nombre/i;
const GROUP = /^(class|form|group|set|course|klasse|classe|clase|grupo|groupe)\b/i;

/** Looks at the words of the first row, else at what the columns are like. */
export function guessedColumns(rows: readonly (readonly string[])[]): Columns {
  const [head = [], ...rest] = rows;
  // A word for names that comes again below is no heading: "Student 1", "Student 2".
  const isHeading = (cell: string, column: number) => [NAME, GROUP].some((word) => word.test(cell) && !rest.some((cells) => word.test(cells[column] ?? "")));
  const heads = rest.length > 0 && head.some(isHeading);
  const body = heads ? rest : rows;
  const lettered = head.map((_, column) => column).filter((column) => body.filter((cells) => /\p{L}/u.test(cells[column] ?? "")).length * 2 > body.length);
  const headed = (pattern: RegExp) => (heads ? head.findIndex((cell) => pattern.test(cell)) : -1);
  const group = headed(GROUP) >= 0 ? headed(GROUP) : (lettered.slice(1).find((column) => repeats(body, column)) ?? null);
  const names = lettered.filter((column) => column !== group && (!heads || NAME.test(head[column] ?? "") || FIRST.test(head[column] ?? "")));
  const [name = lettered[0] ?? 0, second = null] = names;
  return { heads, name, second, group };
}

/** Whether a column holds the same few texts over and over, as that of a class does. */
function repeats(rows: readonly (readonly string[])[], column: number): boolean {
  const values = rows.map((cells) => cells[column] ?? "");
  return rows.length >= 4 && new Set(values).size * 3 <= rows.length;
}
