import { CHOICES } from "../../../core/index";
import { readTable, type TableFault } from "../../class/readTable";
import { listWords } from "../../words/markingList";
import type { Sheet } from "../sheet";
import { isResult, keyOf, markOf } from "./columns";

export interface ReadStudent {
  readonly name: string;
  readonly code: string;
  /** What the file says of it. */
  readonly sheet: Partial<Sheet> & Pick<Sheet, "readings" | "marks">;
}

export type ReadList =
  | { readonly ok: true; readonly students: readonly ReadStudent[]; /** Heads of columns nobody knows, and cells that say no scale or no way of numbering. */ readonly unknown: readonly string[]; readonly odd: readonly string[] }
  | { readonly ok: false; readonly fault: TableFault["kind"] | "headless" };

/** A drawing of 360 spaces with both ends and an opening, and what was worked out. */
const COLUMNS = 1600, LETTERS = 2000;

/** The students of a file and what was read of their drawings; the columns go by the heads in its first line. */
export async function readList(text: string): Promise<ReadList> {
  const table = await readTable(text, { columns: COLUMNS, letters: LETTERS, separator: separatorOf(text) });
  if (!table.ok) return { ok: false, fault: table.fault.kind };
  const [heads = [], ...rows] = table.rows;
  const columns = heads.map(columnOf);
  if (!columns.some((column) => column?.into === "name")) return { ok: false, fault: "headless" };
  const read = rows.map((cells) => studentOf(cells, columns)).filter(({ name, code }) => name !== "" || code !== "");
  return {
    ok: true,
    students: read.map(({ name, code, sheet }) => ({ name, code, sheet })), odd: read.flatMap(({ odd }) => odd),
    unknown: heads.filter((head, i) => head !== "" && columns[i] === null),
  };
}

/** What stands between the heads most often: further down a comma may be a decimal one. */
function separatorOf(text: string): string {
  const heads = text.split(/\r\n|\r|\n/, 1)[0] ?? "";
  const often = (sign: string) => heads.split(sign).length;
  return [";", "\t", "|", ","].reduce((best, sign) => (often(sign) > often(best) ? sign : best));
}

type Column = { readonly into: "name" | "code" | "scale" | "count" | "start" | "along" | "nothing" } | { readonly into: "readings" | "marks"; readonly key: string };

function columnOf(head: string): Column | null {
  const { csv } = listWords;
  const said = head.trim().toLowerCase();
  for (const into of ["name", "code", "scale", "count", "start", "along"] as const) if (said === csv[into].toLowerCase()) return { into };
  if (isResult(head)) return { into: "nothing" };
  const [reading, mark] = [keyOf(head), markOf(head)];
  if (reading !== null) return { into: "readings", key: reading };
  return mark === null ? null : { into: "marks", key: mark };
}

function studentOf(cells: readonly string[], columns: readonly (Column | null)[]): ReadStudent & { readonly odd: readonly string[] } {
  const plain = (into: Column["into"]) => cellText(cells[columns.findIndex((column) => column?.into === into)] ?? "");
  const table = (into: "readings" | "marks") => Object.fromEntries(columns.flatMap((column, i) => {
    const text = cellText(cells[i] ?? "");
    return column?.into === into && text !== "" ? [[column.key, text]] : [];
  }));
  const [name, code] = [plain("name"), plain("code")];
  const said = { scale: plain("scale"), along: plain("along").toLowerCase(), count: plain("count"), start: plain("start") };
  const scale = CHOICES.drawnScale.of.find((one) => one === scaleNamed(said.scale));
  const along = CHOICES.along.of.find((one) => listWords.csv.alongs[one] === said.along);
  return {
    name, code,
    odd: [...(said.scale !== "" && !scale ? [said.scale] : []), ...(said.along !== "" && !along ? [said.along] : [])].map((text) => `${name || code}: ${text}`),
    sheet: {
      ...(scale && { scale }), ...(along && { along }), ...(said.count !== "" && { count: said.count }), ...(said.start !== "" && { start: said.start }),
      readings: table("readings"), marks: table("marks"),
    },
  };
}

/** "1 : 2", "1/2", and what a spreadsheet makes of it when it takes it for a time: "01:02:00". */
function scaleNamed(text: string): string {
  const [, paper, real] = /^(\d+)\s*[:/]\s*(\d+)(?::00)?$/.exec(text) ?? [];
  return `${Number(paper)}:${Number(real)}`;
}

/** A cell without the apostrophe that kept a spreadsheet from taking it for a formula. */
function cellText(cell: string): string {
  return cell.replace(/^'(?=[=+\-@])/, "");
}
