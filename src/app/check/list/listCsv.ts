import { csvNumber, csvText, type CsvFormat } from "../../../output/csv/csvText";
import type { Format } from "../../quantity/format";
import { listWords } from "../../words/markingList";
import { placeKey } from "../places";
import { emptySheet, scaleOf, type Sheet } from "../sheet";
import { placesIn } from "../typedReadings";
import { headOf, markHead } from "./columns";
import { likelyWords, oddCount } from "./resultWords";
import type { StudentResult } from "./studentResult";

const { csv } = listWords;

/** The marking list as a file: what was typed, as typed, and what follows from it. */
export function listCsv(results: readonly StudentResult[], sheetOf: (id: string) => Sheet | undefined, format: Format, file: CsvFormat): string {
  const keys = keysOf(results, sheetOf);
  const given = results.flatMap(({ row }) => Object.keys(sheetOf(row.id)?.marks ?? {}));
  const items = [...new Set([...results.flatMap((one) => (one.ok ? one.check.job.marking.items.map(({ id }) => id) : [])), ...given])];
  const heads = [csv.name, csv.code, csv.scale, csv.count, csv.start, csv.along, ...keys.map((key) => headOf(key, format.trade)), ...items.map(markHead), ...Object.values<string>(csv.results)];
  const rows = results.map((one) => {
    const sheet = sheetOf(one.row.id) ?? emptySheet;
    const texts = [...keys.map((key) => sheet.readings[key] ?? ""), ...items.map((id) => sheet.marks[id] ?? "")];
    return [one.row.name, one.row.code, one.ok ? scaleOf(sheet, one.check.job) : (sheet.scale ?? ""), sheet.count, sheet.start, csv.alongs[sheet.along], ...texts, ...resultCells(one, format, file)];
  });
  return csvText([heads, ...rows], file.separator);
}

/** Every place that can be read of any student's piece, and every place something was typed for, in the order of reading. */
function keysOf(results: readonly StudentResult[], sheetOf: (id: string) => Sheet | undefined): string[] {
  const places = results.flatMap((one) => (one.ok ? placesIn(one.check.places).map(placeKey) : []));
  const typed = results.flatMap(({ row }) => Object.keys(sheetOf(row.id)?.readings ?? {}));
  return [...new Set([...places, ...typed])];
}

function resultCells(one: StudentResult, format: Format, file: CsvFormat): string[] {
  if (!one.ok) return ["", "", "", "", "", "", listWords.faults[one.fault]];
  const { verdict } = one.check;
  const number = (value: number, places = 2) => csvNumber(value, { ...file, places });
  const judged = verdict ? [String(verdict.judged.length), String(verdict.outside), number(verdict.largest)] : ["0", "", ""];
  return [...judged, number(one.marks.sum, 1), number(one.marks.of, 1), String(oddCount(one)), likelyWords(one, format)];
}
