import { create } from "zustand";
import { exerciseOf, type Job, type Problem } from "../../core/index";
import type { LessonSheets } from "../../drawing/lesson/lessonSheets";
import { fileName } from "../files/fileName";
import { saveBlob } from "../files/saveBlob";
import { useOutput } from "../output/choices";
import { correctionOn, usePrinters } from "../output/printers";
import { makePdf } from "../print/makePdf";
import type { Format } from "../quantity/format";
import { lessonOf } from "../teach/sheets/lessonOf";
import { rememberScale } from "../teach/sheets/rememberScale";
import { useSheets } from "../teach/sheets/sheetChoices";
import { words } from "../words/interface";
import { classWords } from "../words/class";
import { classAnswers } from "./classAnswers";
import { scaleForAll, setPages, SheetFault, type OfPiece, type Pupil, type SetOf } from "./classSet";
import { pieceCode } from "./pieceCode";
import type { Student } from "./studentsOf";
import { searched } from "./useSearch";

// The file of a class set that is being made: one at a time.

export type SetKind = keyof typeof classWords.fileNames;

export type SetJob =
  | { readonly state: "idle"; readonly saved: string | null; /** Some sheet had to do without its code. */ readonly withoutCode: boolean }
  | { readonly state: "making"; readonly stage: keyof typeof classWords.progress; readonly done: number; readonly of: number }
  | { readonly state: "failed"; readonly who: string; readonly problem: Problem | null };

export interface SetWish {
  readonly job: Job;
  readonly students: readonly Student[];
  readonly format: Format;
  /** The address of the program in the codes of the sheets; null for sheets without codes. */
  readonly place: string | null;
}

export const useSetJob = create<SetJob>()(() => ({ state: "idle", saved: null, withoutCode: false }));

let running: AbortController | null = null;

/** Makes the file and hands it to the reader; one still being made is given up. What goes wrong is the state "failed". */
export async function startSet(kind: SetKind, wish: SetWish): Promise<void> {
  cancelSet();
  const own = new AbortController();
  running = own;
  const show = (state: SetJob) => {
    if (running === own) useSetJob.setState(state, true);
  };
  const stage = (name: keyof typeof classWords.progress) => async (done: number) => {
    show({ state: "making", stage: name, done, of: wish.students.length });
    await breath();
    return !own.signal.aborted;
  };
  try {
    const pupils = await pupilsOf(wish, stage("pieces"), own.signal);
    const made = pupils && (await fileOf(kind, wish, pupils, stage, own.signal));
    if (!made || own.signal.aborted) return;
    const name = fileName(`${wish.job.title || words.untitled}, ${classWords.fileNames[kind]}`, kind === "answers" ? "csv" : "pdf");
    saveBlob(name, made.blob);
    rememberScale(wish.job, made.scale);
    show({ state: "idle", saved: name, withoutCode: made.withoutCode });
  } catch (fault) {
    const place = fault instanceof SheetFault ? fault.place : 0;
    show({ state: "failed", who: wish.students[place]?.name || classWords.student(place + 1), problem: fault instanceof SheetFault ? fault.problem : null });
  }
}

/** Gives up the file that is being made: nothing is handed over. */
export function cancelSet(): void {
  running?.abort();
  running = null;
  useSetJob.setState({ state: "idle", saved: null, withoutCode: false }, true);
}

type Stage = (name: keyof typeof classWords.progress) => (done: number) => Promise<boolean>;

async function pupilsOf({ job, students }: SetWish, told: (done: number) => Promise<boolean>, signal: AbortSignal): Promise<Pupil[] | null> {
  const search = await searched(exerciseOf(job), students.length, ({ found }) => void told(Math.min(found.length, students.length)), () => signal.aborted);
  if (!search || search.found.length < students.length) return null;
  return students.flatMap((student, i) => search.found[i] ? [{ student, variant: search.found[i] }] : []);
}

interface Made {
  readonly blob: Blob;
  readonly withoutCode: boolean;
  /** Of its sheets; null where they have none. */
  readonly scale: number | null;
}

async function fileOf(kind: SetKind, { job, format, place }: SetWish, pupils: readonly Pupil[], stage: Stage, signal: AbortSignal): Promise<Made | null> {
  if (kind === "answers") {
    const text = await classAnswers(pupils, job.exercise, format, stage("sheets"));
    return text === null ? null : { blob: new Blob([text], { type: "text/csv;charset=utf-8" }), withoutCode: false, scale: null };
  }
  let withoutCode = false;
  const qr: SetOf["qr"] = async (code, of) => {
    const modules = await pieceCode(place ?? "", code, of);
    withoutCode ||= modules === null;
    return modules;
  };
  const set: SetOf = { kind, pupils, title: job.title, lesson: (piece) => lessonOfPiece(piece, format), qr: place === null ? null : qr };
  const scale = await scaleForAll(set, stage("scale"));
  if (signal.aborted) return null;
  const told = stage("sheets");
  const blob = await makePdf(setPages(set, scale, (done) => void told(done)), { title: job.title || words.untitled, signal, onPage: () => undefined });
  return blob && { blob, withoutCode, scale };
}

/** The sheet of a piece as chosen for all sheets; who has no class of their own has the one written there. */
function lessonOfPiece({ kind, development, className, ...student }: OfPiece, format: Format): LessonSheets {
  const choices = useSheets.getState();
  const { printer } = useOutput.getState();
  const correction = printer === null ? null : correctionOn(usePrinters.getState().all, printer, choices.paper);
  return lessonOf(kind, development, choices, format, { ...student, correction, ...(className !== "" && { className }) });
}

/** Lets the page draw and take keys. */
function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
