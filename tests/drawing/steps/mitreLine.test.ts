import { describe, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { elementPoint } from "../../../src/drawing/station/elementPoint";
import { broadsideNames, circleName } from "../../../src/drawing/steps/cutSight";
import { mitreLine } from "../../../src/drawing/steps/mitreLine";
import { expectClose } from "../../support/approximate";
import { developed } from "../../support/developed";
import { pipeJob } from "../../support/pipeJob";

describe("mitreLine", () => {
  for (const attitude of ["upright", "lying"] as const) {
    for (const projection of ["first", "third"] as const) {
      it(`carries a point of the circle to its element in the other view: ${attitude}, ${projection} angle`, () => {
        const development = developed({ ...pipeJob({ diameter: 60, length: 90, attitude }), drawing: { projection, sheetScale: null } });
        const drawn = board(development, { width: 300, height: 200 });
        const [piece] = development.pieces;
        const [, other] = broadsideNames(drawn.views);
        for (const theta of [0, 0.4, 1.9, 3.5, 5.6]) {
          const corner = mitreLine(drawn, projection, piece!.form.radius).over(elementPoint(drawn, circleName(drawn.views), piece!, theta, 0));
          const element = elementPoint(drawn, other, piece!, theta, 30);
          if (attitude === "upright") expectClose(corner.x, element.x, 1e-9);
          else expectClose(corner.y, element.y, 1e-9);
        }
      });
    }
  }
});
