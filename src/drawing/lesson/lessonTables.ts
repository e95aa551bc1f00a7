// What a key says in figures: the stretch-out both ways, the stations, the marking scheme with the tolerance.

import type { Piece } from "../../core/index";
import { LETTERING } from "../lettering";
import { type Column, type Table, table } from "../sheets/table";
import { chordSteps } from "../steps/chordSteps";
import type { LessonSheets } from "./lessonSheets";

/** mm: a height under this is the base line itself. */
const NOTHING = 1e-6;

/** Longest lines of a marking scheme, mm. */
const ITEM = 62, EXPECTED = 46;

/** The stretch-out as π × diameter and as chords stepped round the circle, and how much less those come to. */
export function stretchOutTable({ form: { developed, girth, radius }, stations }: Piece, { figures, words: { lesson }, development: { job } }: LessonSheets): Table {
  const count = stations.filter(({ mark }) => mark === "even").length;
  const { chord, total, short, part } = chordSteps(radius, Math.max(2, count));
  const rows = [
    [lesson.stretchOut.true, `π × ${figures.length(developed)}`, figures.length(girth)],
    ...(count < 2 ? [] : [[lesson.stretchOut.stepped, `${count} × ${figures.length(chord)}`, figures.length(total)], [lesson.stretchOut.short, `${(100 * part).toFixed(2)} %`, figures.length(short)]]),
  ];
  return table([{ head: lesson.stretchOut.head, align: "start" }, { head: "", align: "end" }, { head: job.units === "inch" ? "in" : "mm", align: "end" }], rows, { heads: LETTERING });
}

/** Rows of all stations under their heads, `most` in each table; columns that say nothing are left out. */
export function stationTables({ stations }: Piece, { figures, words: { sheet: { stationTable: head }, lesson } }: LessonSheets, most: number): Table[] {
  const figure = (value: number | null) => (value === null ? "–" : figures.length(value));
  const hasBottom = stations.some(({ bottom }) => bottom !== null && Math.abs(bottom) > NOTHING);
  const hasOpening = stations.some(({ openings }) => openings.length > 0);
  const columns: Column[] = [
    { head: head.station, align: "start" }, { head: head.girth, align: "end" }, ...(hasBottom ? [{ head: head.bottom, align: "end" as const }] : []),
    { head: hasBottom ? head.top : lesson.ordinate, align: "end" }, ...(hasOpening ? [{ head: lesson.opening, align: "end" as const }] : []),
    ...(hasBottom || hasOpening ? [{ head: head.length, align: "end" as const }] : []),
  ];
  const rows = stations.map(({ label, girth, bottom, top, openings, length }) => [
    label, figure(girth), ...(hasBottom ? [figure(bottom)] : []), figure(top),
    ...(hasOpening ? [openings.map(({ from, to }) => `${figures.length(from)} – ${figures.length(to)}`).join(", ")] : []),
    ...(hasBottom || hasOpening ? [figures.length(length)] : []),
  ]);
  const tables = Math.ceil(rows.length / Math.max(1, most));
  const each = Math.ceil(rows.length / tables);
  return Array.from({ length: tables }, (_, i) => table(columns, rows.slice(i * each, (i + 1) * each), { heads: LETTERING }));
}

/** The marking scheme with the sum of what is given; null when there is none. */
export function markingTable({ marking, words: { lesson: { marking: said, off } } }: LessonSheets): Table | null {
  if (marking.length === 0) return null;
  const expects = marking.some(({ expected }) => expected !== undefined);
  const columns: Column[] = [
    { head: said.item, align: "start", most: ITEM }, ...(expects ? [{ head: said.expected, align: "start" as const, most: EXPECTED }] : []), { head: said.marks, align: "end" }, { head: said.given, align: "end" },
  ];
  const sum = marking.reduce((total, { marks }) => total + Math.max(0, marks), 0);
  const rows = marking.map(({ text, expected, marks }) => [text, ...(expects ? [expected ?? ""] : []), marks < 0 ? off(marksText(-marks)) : marksText(marks), ""]);
  return table(columns, [...rows, [said.total, ...(expects ? [""] : []), marksText(sum), ""]], { last: true, heads: LETTERING });
}

function marksText(marks: number): string {
  return String(Number(marks.toFixed(2)));
}
