import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { withoutEdgeNumbers } from "../../../src/drawing/board/withoutEdgeNumbers";
import { developed } from "../../support/developed";
import { pipeJob, planeCut } from "../../support/pipeJob";

describe("withoutEdgeNumbers", () => {
  for (const attitude of ["upright", "lying"] as const) {
    it(`leaves out the thirteen numbers over the edge of the pattern of a pipe ${attitude}, and nothing else`, () => {
      const drawn = board(developed(pipeJob({ diameter: 100, length: 200, attitude, cuts: [planeCut({ angle: 45, height: 80 })] })), { width: 400, height: 300 });
      const left = withoutEdgeNumbers(drawn);
      const gone = drawn.items.filter((item) => !left.includes(item));
      expect(gone.map((item) => (item.kind === "text" ? item.text : item.kind))).toEqual(["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "0"]);
    });
  }
});
