import { develop, type Development, type DrawnScale, type Job, type Problem, type Variant } from "../../core/index";
import { lessonPages, type LessonOutcome } from "../../drawing/lesson/lessonPages";
import type { LessonSheets } from "../../drawing/lesson/lessonSheets";
import type { LessonKind } from "../../drawing/lesson/lessonKinds";
import type { Page } from "../../drawing/sheets/page";
import { onSheets, sheetScaleOf } from "../teach/sheets/sheetScale";
import type { Student } from "./studentsOf";
import { variantJob } from "./variantJob";

// The sheets of a class, one student after the other: each is drawn when the file has come so far, so that a large class takes no more
// memory than a small one, and the page breathes in between.

export interface Pupil {
  readonly student: Student;
  readonly variant: Variant;
}

/** One student's piece, for its sheet. */
export interface OfPiece {
  readonly kind: LessonKind;
  readonly development: Development;
  readonly name: string;
  readonly className: string;
  /** Of the exercise, without the code. */
  readonly title: string;
  readonly code: string;
  readonly qr: LessonSheets["qr"];
  readonly scale: number | null;
}

export interface SetOf {
  readonly kind: LessonKind;
  readonly pupils: readonly Pupil[];
  /** Of the exercise. */
  readonly title: string;
  /** The sheet of one piece, as the teacher chose it. */
  readonly lesson: (piece: OfPiece) => LessonSheets;
  /** The code to be read by a camera for this piece; null for none. */
  readonly qr: ((code: string, job: Job) => Promise<LessonSheets["qr"]>) | null;
}

/** A sheet that cannot be made: whose, by the place in the class, and why. */
export class SheetFault extends Error {
  constructor(readonly place: number, readonly problem: Problem) {
    super(`no sheet for student ${place + 1}: ${problem.code}`);
  }
}

/** A scale not known yet takes as much room in a code as the longest. */
const LONGEST: DrawnScale = "1:1000";

/** The largest scale at which every sheet of the class fits its paper, so that all are alike; null where the sheets have none. `told` after each; null too when it is stopped. */
export async function scaleForAll(set: SetOf, told: (done: number) => Promise<boolean>): Promise<number | null> {
  let least: number | null = null;
  for (const [place, pupil] of set.pupils.entries()) {
    const { scale } = drawn(set, place, pupil, null, await codeOf(set, pupil, LONGEST));
    if (scale !== null) least = Math.min(least ?? scale, scale);
    if (!(await told(place + 1))) return null;
  }
  return least;
}

/** The pages of the class, in the order of its list. @throws SheetFault for a sheet that cannot be made. */
export async function* setPages(set: SetOf, scale: number | null, told: (done: number) => void): AsyncGenerator<Page, void> {
  for (const [place, pupil] of set.pupils.entries()) {
    // Full size goes without saying, which keeps the code coarser.
    yield* drawn(set, place, pupil, scale, await codeOf(set, pupil, scale === 1 ? null : sheetScaleOf(scale))).pages;
    told(place + 1);
  }
}

async function codeOf({ qr }: SetOf, { variant }: Pupil, scale: DrawnScale | null): Promise<LessonSheets["qr"]> {
  return qr && qr(variant.code, onSheets(variantJob(variant), scale));
}

function drawn({ kind, title, lesson }: SetOf, place: number, { student, variant: { code, job } }: Pupil, scale: number | null, qr: LessonSheets["qr"]): Extract<LessonOutcome, { ok: true }> {
  const outcome = develop(job);
  const made: LessonOutcome = outcome.ok
    ? lessonPages(lesson({ kind, development: outcome.development, name: student.name, className: student.group, title, code, qr, scale }))
    : { ok: false, problems: outcome.problems };
  if (!made.ok) throw new SheetFault(place, made.problems[0] ?? { code: "nothing-to-print", field: "" });
  return made;
}
