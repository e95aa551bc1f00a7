import { develop, type Development, type Outcome, type Piece } from "../../src/core/index";
import { chainCrossesItself } from "./chainCrossing";
import { keptElements, type KeptElements } from "./keptElements";
import type { Job } from "./pipeJob";
import { randomPipe } from "./randomPipe";

/** One cut pipe with what the core makes of it and the slow answer beside it. */
export interface LawCase {
  readonly name: string;
  readonly job: Job;
  readonly development: Development;
  readonly piece: Piece;
  readonly elements: KeptElements;
}

/** How many random pipes each law is tried on; LAW_CASES in the environment asks for more. */
export const CASES = Number(process.env["LAW_CASES"] ?? 1000);

/** Runs `check` on every random pipe below `count` that can be made; a failure names the pipe and shows its job. */
export function onRandomPipes(check: (one: LawCase) => void, count = CASES): void {
  for (let n = 0; n < count; n += 1) {
    const job = randomPipe(n);
    onCase(`random pipe ${n}`, job, check);
  }
}

/** Runs `check` on the job unless it is refused. */
export function onCase(name: string, job: Job, check: (one: LawCase) => void): void {
  try {
    const outcome = develop(job);
    if (outcome.ok) check(lawCase(name, job, outcome.development));
  } catch (error) {
    throw new Error(`${name}: ${error instanceof Error ? error.message : String(error)}\n${JSON.stringify(job)}`, { cause: error });
  }
}

export function lawCase(name: string, job: Job, development: Development): LawCase {
  return { name, job, development, piece: development.pieces[0]!, elements: keptElements(job) };
}

/** Whether a well-formed job ought to be refused: where a profile crosses itself or nothing is left (on 720 elements). */
export function refusalExpected(job: Job): "profile-crosses-itself" | "nothing-left" | null {
  const crossing = job.part.cuts.some((cut) => cut.on && cut.kind === "shaped" && chainCrossesItself(cut.profile, cut.end, job));
  if (crossing) return "profile-crosses-itself";
  const elements = keptElements(job);
  for (let step = 0; step < 720; step += 1) {
    if (elements.lengthAt((step * Math.PI) / 360 + 0.001) > 1e-6 * elements.length) return null;
  }
  return "nothing-left";
}

export function codesOf(outcome: Outcome): string[] {
  return outcome.ok ? outcome.development.notices.map((notice) => notice.code) : outcome.problems.map((problem) => problem.code);
}
