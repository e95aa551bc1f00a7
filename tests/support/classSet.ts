import { readFileSync } from "node:fs";
import { exerciseOf, variants, type Job } from "../../src/core/index";
import { scaleForAll, setPages, type Pupil, type SetOf } from "../../src/app/class/classSet";
import { pieceCode } from "../../src/app/class/pieceCode";
import { sentencesOf } from "../../src/app/describe/sentenceText";
import { formatOf } from "../../src/app/quantity/format";
import { DEFAULT_LESSON } from "../../src/drawing/lesson/lessonSheets";
import { DEFAULT_SETUP } from "../../src/drawing/sheets/setup";
import { pdfDocument } from "../../src/output/pdf/pdfDocument";
import { pipeWith, slant } from "../app/pipe";

// A class set of a slanted pipe on A3, as the app makes it but for the teacher's choices.

export const format = formatOf("mm", { places: 2, denominator: 0, comma: false });

/** Diameters of 50 to 80 and angles of 20 to 45 degrees. */
export const exercise: Job = {
  ...pipeWith([slant]), title: "Roof vent",
  exercise: { ...pipeWith([]).exercise, ranges: [{ field: "part.diameter", from: 50, to: 80, step: 1 }, { field: "part.cuts.slope.angle", from: 20, to: 45, step: 5 }] },
};

export function pupilsNamed(names: readonly string[]): Pupil[] {
  const made = variants(exerciseOf(exercise), names.length);
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  return made.variants.map((variant, i) => ({ variant, student: { name: names[i] ?? "", group: "3b" } }));
}

export function setOf(pupils: readonly Pupil[], kind: SetOf["kind"]): SetOf {
  return {
    kind, pupils, title: "Roof vent",
    lesson: ({ name, className, title, ...piece }) => ({
      ...DEFAULT_LESSON, ...piece, figures: format, school: { ...DEFAULT_LESSON.school, name, className, title }, setup: { ...DEFAULT_SETUP, paper: { kind: "named", name: "A3" } },
      text: sentencesOf(piece.development.job, ({ value, quantity }) => format.field(value, quantity)),
    }),
    qr: async (code, job) => pieceCode("https://school.example/pipes/", code, job),
  };
}

/** The bytes of its file. */
export async function writtenSet(set: SetOf): Promise<Uint8Array> {
  const scale = await scaleForAll(set, () => Promise.resolve(true));
  const bytes = await pdfDocument(setPages(set, scale, () => undefined), { title: "set", lettering: readFileSync("src/app/print/lettering.otf"), made: new Date(0) });
  if (!bytes) throw new Error("no file");
  return bytes;
}
