import { decodedText } from "../../class/decodedText";
import { selectJob } from "../../store/select";
import { useApp } from "../../store/store";
import { listWords } from "../../words/markingList";
import { putSheet, studentKey } from "../sheets";
import { MOST_STUDENTS, freshId, putRows, useMarkingList, type ListRow } from "./markingList";
import { readList, type ReadStudent } from "./readList";

/** Bytes: a larger file is no marking list. */
const LARGEST = 4_000_000;

/** Adds the students of a CSV file to the list; one who is in it already, by name and code, gets what the file says besides what was typed. What was done, or why not. */
export async function openList(file: File): Promise<{ readonly ok: boolean; readonly said: string }> {
  const { file: said } = listWords;
  if (file.size > LARGEST) return { ok: false, said: said["too-large"] };
  const text = await file.arrayBuffer().then((bytes) => decodedText(new Uint8Array(bytes)), () => null);
  if (text === null) return { ok: false, said: said["not-text"] };
  const read = await readList(text);
  if (!read.ok) return { ok: false, said: said[read.fault] };
  const { rows } = useMarkingList.getState();
  const placed = read.students.map((student) => ({ student, row: rows.find((row) => isSame(row, student)) ?? { id: freshId(), name: student.name, code: student.code } }));
  const fresh = placed.flatMap(({ row }) => (rows.includes(row) ? [] : [row]));
  if (rows.length + fresh.length > MOST_STUDENTS) return { ok: false, said: said.full(MOST_STUDENTS) };
  putRows([...rows, ...fresh], selectJob(useApp.getState()));
  for (const { student: { sheet }, row } of placed) {
    putSheet(studentKey(row.id), (now) => ({ ...now, ...sheet, readings: { ...now.readings, ...sheet.readings }, marks: { ...now.marks, ...sheet.marks } }));
  }
  return { ok: true, said: [said.opened(read.students.length), ...(read.unknown.length > 0 ? [said.unknown(read.unknown)] : []), ...(read.odd.length > 0 ? [said.odd(read.odd)] : [])].join(" ") };
}

function isSame(row: ListRow, { name, code }: Pick<ReadStudent, "name" | "code">): boolean {
  return row.name === name && row.code === code;
}
