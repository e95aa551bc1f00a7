import { describe, expect, test } from "vitest";
import { begun, startPieces } from "../../../src/app/start/startPieces";
import { developed, pipeWith } from "../pipe";

const quarterInch = 25.4 / 4;

test("begun with the saddle leaves no flat at the sides: the hollow is as deep as the pipe is wide", () => {
  for (const diameter of [20, 48.3, 60.3, 90, 100, 114.3]) {
    const [cut] = begun(pipeWith([], { diameter, length: 200 }), "saddle").part.cuts;
    if (cut?.kind !== "shaped" || cut.profile.shape !== "hollow") throw new Error("no hollow");
    const { radius, height } = cut.profile;
    // Sagitta of a chord as wide as the pipe.
    expect(height).toBeGreaterThanOrEqual(radius - Math.sqrt(radius ** 2 - (diameter / 2) ** 2));
    expect(height).toBeLessThan(radius - Math.sqrt(radius ** 2 - (diameter / 2) ** 2) + 1);
  }
});

describe.each(startPieces)("begun with %s", (piece) => {
  test("leaves the pipe as it was and gives one piece without a warning, whatever its proportions", () => {
    for (const [diameter, length] of [[90, 220], [20, 300], [600, 500]] as const) {
      const job = begun(pipeWith([], { diameter, length }), piece);
      const { pieces, notices } = developed(job);
      expect([pieces.length, notices, job.part.diameter, job.part.length]).toEqual([1, [], diameter, length]);
      expect(pieces[0]?.pattern.loops.length).toBe(piece === "branch" ? 2 : 1);
    }
  });

  test("gives whole quarters of an inch where the job is in inches", () => {
    const { cuts } = begun({ ...pipeWith([], { diameter: 101.6, length: 203.2 }), units: "inch" }, piece).part;
    const lengths = cuts.flatMap((cut) => (cut.kind === "shaped" && cut.profile.shape === "hollow" ? [cut.profile.radius] : cut.kind === "opening" ? [cut.height] : cut.kind === "plane" ? [cut.height] : []));
    for (const one of lengths) expect(Math.abs(one / quarterInch - Math.round(one / quarterInch))).toBeLessThan(1e-9);
  });
});
