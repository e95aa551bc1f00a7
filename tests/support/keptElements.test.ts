import { describe, expect, it } from "vitest";
import { expectAllClose } from "./approximate";
import { keptElements } from "./keptElements";
import { openingCut, pipeJob, planeCut, shapedCut } from "./pipeJob";
import { isKept } from "./pointMembership";
import { randomPipe } from "./randomPipe";
import { randomSource } from "./randomSource";
import { chainCrossesItself } from "./chainCrossing";

const flat = (reaches: readonly { from: number; to: number }[]): number[] => reaches.flatMap(({ from, to }) => [from, to]);

describe("keptElements", () => {
  it("keeps the whole element of an uncut pipe", () => {
    expect(flat(keptElements(pipeJob({ diameter: 10, length: 7 })).at(1))).toEqual([0, 7]);
  });

  it("cuts the front element highest under a plane that is highest in front", () => {
    const elements = keptElements(pipeJob({ diameter: 10, length: 70, cuts: [planeCut({ angle: 45, height: 30 })] }));
    expectAllClose([...flat(elements.at(0)), ...flat(elements.at(Math.PI))], [0, 35, 0, 25], 1e-12);
  });

  it("shows an opening offset to the right on the right of the front element", () => {
    const cut = openingCut({ shape: "round", diameter: 2 }, { height: 30, offset: 3 });
    const elements = keptElements(pipeJob({ diameter: 10, length: 70, cuts: [cut] }));
    expectAllClose(flat(elements.at(Math.asin(3 / 5))), [0, 29, 31, 70], 1e-12);
  });

  it("leaves the far wall whole under an opening through the near wall", () => {
    const cut = openingCut({ shape: "round", diameter: 2 }, { height: 30 });
    expect(keptElements(pipeJob({ diameter: 10, length: 70, cuts: [cut] })).lengthAt(Math.PI)).toBe(70);
  });

  it("raises the right side of an ogee that rises to the right", () => {
    const cut = shapedCut({ shape: "ogee", low: 20, high: 30, rising: "right", radius: null });
    const elements = keptElements(pipeJob({ diameter: 10, length: 70, cuts: [cut] }));
    expectAllClose([elements.lengthAt(Math.PI / 2 - 1e-9), elements.lengthAt(-Math.PI / 2 + 1e-9)], [30, 20], 1e-6);
  });

  it("agrees with point membership on 600 random pipes", () => {
    for (let n = 0; n < 600; n += 1) {
      const job = randomPipe(n);
      if (job.part.cuts.some((cut) => cut.kind === "shaped" && chainCrossesItself(cut.profile, cut.end, job, false))) continue;
      const elements = keptElements(job);
      const source = randomSource(n + 1e6);
      for (let trial = 0; trial < 60; trial += 1) {
        const [theta, z] = [source.between(0, 7), source.between(0, job.part.length)];
        const ends = flat(elements.at(theta));
        if (ends.some((end) => Math.abs(end - z) < 0.02 * elements.radius)) continue;
        const kept = ends.filter((end) => end < z).length % 2 === 1;
        if (kept !== isKept(job, theta, z)) throw new Error(`case ${n}: at ${theta}, ${z}: ${kept}\n${JSON.stringify(job)}`);
      }
    }
  });
});
