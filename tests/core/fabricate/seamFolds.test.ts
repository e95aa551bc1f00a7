import { describe, expect, it } from "vitest";
import { pathBounds } from "../../../src/core/geometry/pathBounds";
import type { FabricatedPiece, Mark } from "../../../src/core/index";
import { expectAllClose, expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";
import { shopPiece, slope } from "./pieces";

const WIDTH = 6;
const grooved = (share: number) => ({ seam: { kind: "grooved", width: WIDTH, share } }) as const;
const folds = ({ marks }: FabricatedPiece) => marks.filter((mark): mark is Extract<Mark, { kind: "fold" }> => mark.kind === "fold");
/** x of the bend lines at both edges of the seam. */
const places = (piece: FabricatedPiece) => folds(piece).filter(({ place }) => place.startsWith("seam")).map(({ path }) => path[0]!.from.x).sort((a, b) => a - b);
const rims = ({ contours }: FabricatedPiece) => {
  const { from, to } = pathBounds(contours.flatMap(({ segments }) => segments))!;
  return [from.x, to.x];
};

describe("seamFolds", () => {
  for (const share of [0, 1 / 6, 1 / 3, 1 / 2, 2 / 3, 1]) {
    it(`lie one finished width in from both rims when ${share.toFixed(2)} of the 3 W are on the first edge`, () => {
      const piece = shopPiece(grooved(share), [slope]);
      const [left, right] = rims(piece);
      expectAllClose(places(piece), [left! + WIDTH, right! - WIDTH], 1e-9);
    });
  }
  // Both hooks hold each other when the bend lines are a girth and one width apart: derived, two hooks of W taken from G + 3 W.
  it("are a girth and one width apart, described and mirrored", () => {
    for (const hand of ["described", "opposite"] as const) {
      const piece = shopPiece({ ...grooved(0.2), hand }, [slope]);
      const [left, right] = places(piece);
      expectClose(right! - left!, piece.piece.pattern.girth + WIDTH, 1e-9);
    }
  });
  it("end at the notches outside the net edge, at the net ends inside it", () => {
    const piece = shopPiece(grooved(1), []);
    const [inside, outside] = folds(piece).sort((a, b) => (a.place < b.place ? -1 : 1)).map(({ path }) => path.flatMap(({ from, to }) => [from.y, to.y])).map((ys) => [Math.min(...ys), Math.max(...ys)]);
    // 3 W on the first edge: 12 out, each end 12 in by its notch at 45°.
    expectAllClose(outside!, [12, 188], 1e-9);
    expectAllClose(inside!, [0, 200], 1e-9);
  });
  it("are pricked at both ends, and the net line under them is not drawn again", () => {
    const { marks } = shopPiece(grooved(1 / 3), []);
    expect(marks.filter((mark) => mark.kind === "prick" && mark.on === "fold")).toHaveLength(4);
    expect(marks.filter(({ kind }) => kind === "seam").map((mark) => "place" in mark && mark.place)).toEqual(["seam-end"]);
  });
  it("stop at an opening across the seam", () => {
    const piece = shopPiece(grooved(0.5), [openingCut({ shape: "round", diameter: 40 }, { direction: 0, height: 100 })], { seam: { at: "front" } });
    expect(folds(piece)).toHaveLength(4);
  });
  it("are none of a lap, a butt joint, and a seam that cannot be made", () => {
    expect(places(shopPiece({ seam: { kind: "lap", width: WIDTH, share: 1 } }))).toEqual([]);
    expect(places(shopPiece({}))).toEqual([]);
    expect(places(shopPiece({ seam: { kind: "grooved", width: 150, share: 0.5 } }))).toEqual([]);
  });
});
