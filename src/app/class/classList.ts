import { create } from "zustand";
import { decodedText } from "./decodedText";
import { guessedColumns, type Columns } from "./guessedColumns";
import { MOST_ROWS, readTable, type TableFault } from "./readTable";
import { studentsOf, type Student } from "./studentsOf";

// The list of the class, kept on this device and nowhere else.

export interface ClassList {
  /** As read; none: the class is so many students without names. */
  readonly rows: readonly (readonly string[])[];
  readonly columns: Columns;
  /** Students without a list. */
  readonly count: number;
  readonly students: readonly Student[];
  /** Why the last list offered was not taken. */
  readonly fault: TableFault | null;
  /** Whether the browser keeps it. */
  readonly keeps: boolean;
}

const place = "flatwright.class";
const noColumns: Columns = { heads: false, name: 0, second: null, group: null };

type Kept = Pick<ClassList, "rows" | "columns" | "count">;

export const useClassList = create<ClassList>()(() => withStudents(kept()));

/** Takes a pasted list, or says why not; the list before stays then. */
export async function takeListText(text: string): Promise<void> {
  const read = await readTable(text);
  if (!read.ok) return useClassList.setState({ fault: read.fault });
  keep({ rows: read.rows, columns: guessedColumns(read.rows), count: useClassList.getState().count });
}

/** Takes the list of a file. */
export async function takeListFile(file: File): Promise<void> {
  if (file.size > 4_000_000) return useClassList.setState({ fault: { kind: "too-large", most: 1_000_000 } });
  try {
    await takeListText(decodedText(new Uint8Array(await file.arrayBuffer())));
  } catch {
    useClassList.setState({ fault: { kind: "not-text" } });
  }
}

/** Says which columns are meant. */
export function chooseColumns(change: Partial<Columns>): void {
  const { rows, columns, count } = useClassList.getState();
  keep({ rows, columns: { ...columns, ...change }, count });
}

/** So many students without names, 1 to 2000. */
export function chooseCount(count: number): void {
  keep({ rows: [], columns: noColumns, count: Math.min(MOST_ROWS, Math.max(1, Math.round(count))) });
}

/** Forgets the list. */
export function forgetList(): void {
  keep({ rows: [], columns: noColumns, count: useClassList.getState().count });
}

function withStudents(list: Kept): ClassList {
  const students = list.rows.length > 0 ? studentsOf(list.rows, list.columns) : Array.from({ length: list.count }, () => ({ name: "", group: "" }));
  return { ...list, students, fault: students.length === 0 ? { kind: "empty" } : null, keeps: true };
}

function keep(list: Kept): void {
  const { rows, columns, count } = list;
  let keeps = true;
  try {
    localStorage.setItem(place, JSON.stringify({ rows, columns, count }));
  } catch {
    keeps = false;
  }
  useClassList.setState({ ...withStudents(list), keeps });
}

function kept(): Kept {
  const none: Kept = { rows: [], columns: noColumns, count: 30 };
  try {
    const read: unknown = JSON.parse(localStorage.getItem(place) ?? "null");
    return isKept(read) ? read : none;
  } catch {
    return none;
  }
}

function isKept(data: unknown): data is Kept {
  if (typeof data !== "object" || data === null) return false;
  const { rows, columns, count } = data as Record<string, unknown>;
  const isRows = Array.isArray(rows) && rows.length <= MOST_ROWS && rows.every((cells) => Array.isArray(cells) && cells.every((cell) => typeof cell === "string"));
  return isRows && isColumns(columns) && Number.isInteger(count) && Number(count) >= 1 && Number(count) <= MOST_ROWS;
}

function isColumns(data: unknown): data is Columns {
  if (typeof data !== "object" || data === null) return false;
  const { heads, name, second, group } = data as Record<string, unknown>;
  const isColumn = (value: unknown) => Number.isInteger(value) && Number(value) >= 0;
  return typeof heads === "boolean" && isColumn(name) && [second, group].every((value) => value === null || isColumn(value));
}
