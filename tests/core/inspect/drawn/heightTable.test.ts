import { describe, expect, it } from "vitest";
import { keptAt } from "../../../../src/core/index";
import { heightTable } from "../../../../src/core/inspect/drawn/heightTable";
import { expectClose } from "../../../support/approximate";
import { developedPipe } from "../../../support/developed";
import { exercise } from "../../../support/exercise";
import { pipeJob, planeCut } from "../../../support/pipeJob";

describe("heightTable", () => {
  it("gives the ends of the kept stretches on any element", () => {
    for (let n = 0; n < 20; n++) {
      const piece = developedPipe(exercise(n));
      const table = heightTable(exercise(n))!;
      for (let k = 0; k < 7; k++) {
        const { after } = keptAt(piece, 0.1 + k);
        expectClose(table.at(0.1 + k).top[0]!, after.at(-1)!.to, 1e-9);
        expectClose(table.at(0.1 + k).bottom[0]!, after[0]!.from, 1e-9);
      }
    }
  });

  it("is null for a piece that cannot be made", () => {
    expect(heightTable(pipeJob({ diameter: 50, length: 100, cuts: [planeCut({ height: -5 })] }))).toBeNull();
    expect(heightTable(pipeJob({ diameter: 2, thickness: 3, basis: "outside", length: 100 }))).toBeNull();
  });
});
