import { describe, expect, it } from "vitest";
import { shopPiece, shopPipe, slope } from "./pieces";

describe("fabricatedPiece", () => {
  it("fabricatedPiece of a template lies outside up whatever the job says", () => {
    const face = (purpose: "blank" | "wrap") => shopPiece({ purpose }, [slope], { face: "inside" }).face;
    expect([face("blank"), face("wrap")]).toEqual(["inside", "outside"]);
  });
  it("fabricatedPiece lists only what was added", () => {
    const { pieces, problems } = shopPipe({ seam: { kind: "lap", width: 500, share: 1 }, edges: { top: { kind: "hem", width: 5 }, bottom: { kind: "none" } } });
    expect(pieces[0]!.allowances.map(({ place }) => place)).toEqual(["top"]);
    expect(problems).toHaveLength(1);
  });
  it("fabricatedPiece with nothing asked for is the pattern as it is", () => {
    const { piece, net } = shopPiece({}, [slope]);
    expect(net).toEqual(piece.pattern.loops);
  });
});
