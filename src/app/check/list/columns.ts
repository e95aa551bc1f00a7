import { TRADE, capital, type TradeWords } from "../../../drawing/tradeWords";
import { listWords } from "../../words/markingList";

// The heads of the columns of a marking list: every place that is read, and every mark of the teacher's eye, by a name that comes back to
// the same place.

const lines = ["top", "bottom", "lower", "upper"] as const;
const { csv } = listWords;

/** "top 3" is "Top 3", "angle roof-slope" is "Angle roof-slope". */
export function headOf(key: string, { girth }: TradeWords): string {
  if (key === "stretchOut") return capital(girth);
  if (key === "spacing") return csv.spacing;
  const [line = "", ...rest] = key.split(" ");
  return `${line === "angle" ? csv.angle : csv[lines.find((one) => one === line) ?? "top"]} ${rest.join(" ")}`;
}

/** The key of a place by its head, whatever its capitals and in whosever words; null for a column that is none. */
export function keyOf(head: string): string | null {
  const said = head.trim().toLowerCase();
  if (Object.values<TradeWords>(TRADE).some(({ girth }) => said === girth)) return "stretchOut";
  if (said === csv.spacing.toLowerCase()) return "spacing";
  const angle = after(said, csv.angle);
  if (angle !== null && /^[a-z0-9-]+$/.test(angle)) return `angle ${angle}`;
  for (const line of lines) {
    const at = after(said, csv[line]);
    if (at !== null && /^\d+(\.\d+)?$/.test(at)) return `${line} ${at}`;
  }
  return null;
}

/** The head of an item's column; the id tells items apart. */
export function markHead(id: string): string {
  return `${csv.marksFor} ${id}`;
}

/** The id of the item of a column; null for a column that is none. */
export function markOf(head: string): string | null {
  const id = after(head.trim().toLowerCase(), csv.marksFor);
  return id !== null && /^[a-z0-9-]+$/.test(id) && !isResult(head) ? id : null;
}

/** Whether a column holds what was worked out, which is worked out anew when the file is opened. */
export function isResult(head: string): boolean {
  return Object.values<string>(csv.results).some((one) => one.toLowerCase() === head.trim().toLowerCase());
}

function after(said: string, word: string): string | null {
  const start = `${word.toLowerCase()} `;
  return said.startsWith(start) ? said.slice(start.length).trim() : null;
}
