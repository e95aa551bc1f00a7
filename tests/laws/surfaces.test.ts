import { describe, expect, it } from "vitest";
import { develop, keptAt, type FabricationChoices, type Job, type Piece } from "../../src/core/index";
import { removedStretches } from "../../src/core/cut/removedStretches";
import { expectClose } from "../support/approximate";
import { onEach } from "../support/lawCase";
import { randomPipe } from "../support/randomPipe";

const COUNT = 120;

/** The pipe with a wall of a twentieth of its diameter, its cuts found on `surface`; null where it cannot be made. */
function walled(job: Job, fabrication: Partial<FabricationChoices>): Piece | null {
  const part = { ...job.part, basis: "mean" as const, thickness: job.part.diameter / 20 };
  const outcome = develop({ ...job, part, fabrication: { ...job.fabrication, ...fabrication } });
  return outcome.ok ? outcome.development.pieces[0]! : null;
}

interface Made { readonly name: string; readonly job: Job; readonly piece: Piece }

/** The random pipes made so, by what was asked, kept for the next claim about the same. */
const madeWith = new Map<string, readonly Made[]>();

function onPipes(fabrication: Partial<FabricationChoices>, check: (piece: Piece, job: Job) => void): void {
  const asked = JSON.stringify(fabrication);
  const pipes = madeWith.get(asked) ?? allMade(fabrication);
  madeWith.set(asked, pipes);
  onEach(pipes, ({ piece, job }) => check(piece, job));
  expect(pipes.length).toBeGreaterThan(COUNT / 2);
}

function allMade(fabrication: Partial<FabricationChoices>): readonly Made[] {
  return Array.from({ length: COUNT }, (_, n) => {
    const job = randomPipe(n);
    const piece = walled(job, fabrication);
    return piece ? { name: `random pipe ${n}`, job, piece } : null;
  }).filter((one) => one !== null);
}

/** Length of the element at θ that neither the outside nor the inside loses, by a plain sweep over all removed stretches. */
function lengthClearOfBoth({ form, cutters }: Piece, theta: number): number {
  const both = cutters.flatMap((cutter, index) => [form.outside / 2, form.inside / 2].flatMap((radius) => removedStretches({ ...cutter, radius }, index, theta)));
  const ends = [0, form.length, ...both.flatMap(({ from, to }) => [from, to])].filter((z) => z >= 0 && z <= form.length).sort((a, b) => a - b);
  return ends.slice(1).reduce((sum, to, i) => {
    const middle = (to + ends[i]!) / 2;
    return both.some((gone) => middle > gone.from && middle < gone.to) ? sum : sum + to - ends[i]!;
  }, 0);
}

describe("a random pipe cut clear of both faces of its wall", () => {
  it("keeps of each element what both the outside and the inside keep", () => onPipes({ surface: "clear" }, (piece) => {
    for (let k = 0; k < 24; k += 1) {
      const theta = 0.123 + (k * Math.PI) / 12;
      const kept = keptAt(piece, theta).after.reduce((sum, { from, to }) => sum + to - from, 0);
      expectClose(kept, lengthClearOfBoth(piece, theta), 1e-6, `kept at ${theta}`);
    }
  }));
});

describe.each([["outside"], ["inside"], ["clear"]] as const)("a random pipe cut on the surface %s", (surface) => {
  it("has as much area flat as on its surface", () => onPipes({ surface }, ({ pattern, form }) => {
    expectClose(pattern.proof.areaFlat, pattern.proof.areaSurface, 1e-4 * pattern.girth * form.length, "area");
  }));
  it("has outlines that close and roll back onto the cuts", () => onPipes({ surface }, ({ pattern }) => {
    expectClose(pattern.proof.closingError, 0, 1e-6);
    expectClose(pattern.proof.rollBackError, 0, 0.006);
  }));
});

describe("the girth", () => {
  // Common practice: a template goes on the outside, over half its own thickness.
  it("of a wrapped template is π (t + paper) more than that of the blank", () => onPipes({ purpose: "wrap", paper: 0.3 }, (piece, job) => {
    const blank = walled(job, { purpose: "blank" })!;
    expectClose(piece.pattern.girth - blank.pattern.girth, Math.PI * (piece.form.thickness + 0.3), 1e-9 * piece.form.mean);
  }));
  it("grows by 2 π t from the inside (K = 0) to the outside (K = 1)", () => onPipes({ kFactor: 1 }, (piece, job) => {
    const least = walled(job, { kFactor: 0 })!;
    expectClose(piece.pattern.girth - least.pattern.girth, 2 * Math.PI * piece.form.thickness, 1e-9 * piece.form.mean);
  }));
});
