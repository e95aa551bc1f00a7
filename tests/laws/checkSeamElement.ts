import type { LawCase } from "../support/lawCase";

/**
 * The kept length at a seam asked for on the shortest (longest) element is at most (at least) that of 720 other elements. Asked only of pipes without openings that
 * keep something on every element: elsewhere the trade has no one answer.
 */
export function checkSeamElement({ piece, job, elements }: LawCase): void {
  const { seam } = job.development;
  if (seam.at !== "shortest" && seam.at !== "longest") return;
  if (job.part.cuts.some((cut) => cut.on && cut.kind === "opening") || !piece.trimmed.closedRound) return;
  const best = seam.at === "shortest" ? Math.min : Math.max;
  const at = best(...[-1e-7, 0, 1e-7].map((step) => elements.lengthAt(piece.pattern.seam + step)));
  for (let step = 0; step < 720; step += 1) {
    const other = elements.lengthAt((step * Math.PI) / 360 + 0.0012);
    if (best(at, other) !== at && Math.abs(at - other) > 1e-4) throw new Error(`${seam.at}: ${at} at the seam, ${other} elsewhere`);
  }
}
