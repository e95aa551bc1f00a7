// Which cells has a text copied from a spreadsheet, a file or a page? What stands between them is found out.

/** Rows of tidy cells; blank lines at the end are none. */
export function pastedCells(text: string): string[][] {
  const lines = text.replace(/\r\n?/g, "\n").replace(/[\s\n]+$/, "").split("\n");
  return cellsBy(lines).map((cells) => cells.map(tidy));
}

function cellsBy(lines: readonly string[]): string[][] {
  const filled = lines.filter((line) => line.trim() !== "");
  for (const sign of ["\t", ";", "|"]) if (lines.some((line) => line.includes(sign))) return lines.map((line) => line.split(sign));
  if (filled.every((line) => /\S {2,}\S/.test(line))) return lines.map((line) => line.trim().split(/ {2,}/));
  if (filled.every((line) => /\S,\s+\S/.test(line))) return lines.map((line) => line.split(/,\s+/));
  const figured = filled.filter((line) => /\d/.test(line));
  const counted = [",", " "].find((sign) => countsOn(figured, sign));
  const pointed = figured.length > 1 && figured.every((line) => /,.*\d\.\d/.test(line));
  // A comma parts a number that is written with a point from what stands before, unless it parts its thousands.
  if (pointed && (counted === "," || !figured.every((line) => THOUSANDS.test(line.trim())))) return lines.map((line) => line.split(","));
  return lines.map((line) => (counted === undefined ? [line] : partedAt(line.trim(), counted)));
}

const THOUSANDS = /^[1-9]\d{0,2}(,\d{3})+\.\d+$/;

/** Whether each line begins with the number after that of the line before, and the sign: "0,157", "1,159", "2,164". */
function countsOn(lines: readonly string[], sign: string): boolean {
  const numbers = lines.map((line) => new RegExp(`^\\s*(\\d+)${sign}\\s*\\S`).exec(line)?.[1] ?? "");
  return numbers.length > 2 && numbers.every((number, i) => number !== "" && Number(number) === Number(numbers[0]) + i);
}

function partedAt(line: string, sign: string): string[] {
  const at = line.indexOf(sign);
  return at < 0 ? [line] : [line.slice(0, at), line.slice(at + 1)];
}

/** Without the quotation marks of a file. */
function tidy(cell: string): string {
  return cell.trim().replace(/^"(.*)"$/, "$1").trim();
}
