import { describe, it } from "vitest";
import { onRandomPipes, type LawCase } from "../support/lawCase";
import { checkOrdinates, checkSpacing, checkSummary } from "./checkStations";

/** Kept length at the seam is at most (or at least) that of 720 other elements. Asked only of pipes without openings that keep something everywhere. */
function checkSeamElement({ piece, job, elements }: LawCase): void {
  const { seam } = job.development;
  if (seam.at !== "shortest" && seam.at !== "longest") return;
  if (job.part.cuts.some((cut) => cut.on && cut.kind === "opening") || !piece.trimmed.closedRound) return;
  const best = seam.at === "shortest" ? Math.min : Math.max;
  const near = [-1e-7, 0, 1e-7].map((step) => elements.lengthAt(piece.pattern.seam + step));
  const at = best(...near);
  for (let step = 0; step < 720; step += 1) {
    const other = elements.lengthAt((step * Math.PI) / 360 + 0.0012);
    if (best(at, other) !== at && Math.abs(at - other) > 1e-4) throw new Error(`${seam.at}: ${at} at the seam, ${other} elsewhere`);
  }
}

describe("the stations of a random cut pipe", () => {
  it("report the kept stretches of their elements to 1e-9 of the pipe's size", () => onRandomPipes(checkOrdinates));
  it("lie at equal steps of the girth", () => onRandomPipes(checkSpacing));
  it("sum up their stretches", () => onRandomPipes(checkSummary));
  it("begin at the shortest or longest element when asked", () => onRandomPipes(checkSeamElement));
});
