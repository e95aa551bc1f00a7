import { develop, type Development, type Outcome, type Piece, type Vec2 } from "../../src/core/index";
import { chainCrossesItself, chainTouchesItself } from "./chainCrossing";
import { keptElements, type KeptElements } from "./keptElements";
import { finePoints } from "./loopSampling";
import type { Job } from "./pipeJob";
import { randomPipe } from "./randomPipe";

/** One cut pipe with what the core makes of it and the slow answer beside it. */
export interface LawCase {
  readonly name: string;
  readonly job: Job;
  readonly development: Development;
  readonly piece: Piece;
  readonly elements: KeptElements;
  /** The pattern's loops as points, no chord of which strays by more than 0.0005 mm; made when first asked for. */
  readonly runs: () => readonly (readonly Vec2[])[];
}

/** How many random pipes each law is tried on; LAW_CASES in the environment asks for more. */
export const CASES = Number(process.env["LAW_CASES"] ?? 2000);

/** The random pipes below `count` that can be made. */
export function randomCases(count: number): readonly LawCase[] {
  return Array.from({ length: count }, (_, n) => lawCase(`random pipe ${n}`, randomPipe(n))).filter((one) => one !== null);
}

/** The random pipes below `count` that can be made, with their seam at `seam` degrees, followed within 0.005 mm. */
export function randomPieces(count: number, seam: number): readonly { readonly name: string; readonly job: Job; readonly piece: Piece }[] {
  return Array.from({ length: count }, (_, n) => {
    const drawn = randomPipe(n);
    const job: Job = { ...drawn, development: { ...drawn.development, seam: { at: "angle", angle: seam } } };
    const outcome = develop(job, { chordTolerance: 0.005 });
    return outcome.ok ? { name: `random pipe ${n}`, job, piece: outcome.development.pieces[0]! } : null;
  }).filter((one) => one !== null);
}

/** Runs `check` on every case. Throws where it fails, with the names of all cases that fail and the job of the first. */
export function onEach<Case extends { readonly name: string; readonly job: Job }>(cases: readonly Case[], check: (one: Case) => void): void {
  const failures = cases.flatMap((one) => {
    try {
      check(one);
      return [];
    } catch (error) {
      return [{ one, error }];
    }
  });
  const first = failures[0];
  if (!first) return;
  const said = failures.map(({ one, error }) => `${one.name}: ${error instanceof Error ? error.message : String(error)}`);
  throw new Error(`${failures.length} of ${cases.length} cases fail\n${said.join("\n")}\n${JSON.stringify(first.one.job)}`, { cause: first.error });
}

/** The case of a job, or null where the job is refused. */
export function lawCase(name: string, job: Job): LawCase | null {
  const outcome = develop(job);
  if (!outcome.ok) return null;
  const piece = outcome.development.pieces[0]!;
  let runs: readonly (readonly Vec2[])[] | null = null;
  return {
    name, job, development: outcome.development, piece, elements: keptElements(job),
    runs: () => (runs ??= piece.pattern.loops.map((loop) => finePoints(loop, 5e-4))),
  };
}

/** Why a well-formed job ought to be refused: a profile crosses itself, or nothing is left (on 720 elements). Null where it ought to be made. */
export function refusalExpected(job: Job, closely = false): "profile-crosses-itself" | "nothing-left" | null {
  const crossing = job.part.cuts.some((cut) => cut.on && cut.kind === "shaped" && chainCrossesItself(cut.profile, cut.end, job, closely));
  if (crossing) return "profile-crosses-itself";
  const elements = keptElements(job);
  for (let step = 0; step < 720; step += 1) {
    if (elements.lengthAt((step * Math.PI) / 360 + 0.001) > 1e-6 * elements.length) return null;
  }
  return "nothing-left";
}

/** Throws where the core does not make what ought to be made, or does not refuse what ought to be refused, unless a chain only touches itself. A doubtful crossing is looked at closely. */
export function checkRefusal(job: Job): void {
  const outcome = develop(job);
  const said = outcome.ok ? null : outcome.problems[0]!.code;
  if (said === refusalExpected(job)) return;
  const expected = refusalExpected(job, true);
  const touching = job.part.cuts.some((cut) => cut.on && cut.kind === "shaped" && chainTouchesItself(cut.profile, cut.end, job));
  if (said !== expected && !touching) throw new Error(`${said ?? "made"}, expected ${expected ?? "to be made"}`);
}

export function codesOf(outcome: Outcome): string[] {
  return outcome.ok ? outcome.development.notices.map((notice) => notice.code) : outcome.problems.map((problem) => problem.code);
}
