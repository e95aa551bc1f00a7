import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";
import { shopPiece, shopPipe, slope } from "./pieces";

describe("withRootGap", () => {
  it("withRootGap of 0 changes nothing", () => expectClose(shopPiece().blank.width, 100 * Math.PI, 1e-9));
  it("withRootGap takes the gap off the width", () => expectClose(shopPiece({ seam: { kind: "butt", gap: 3 } }, [slope]).blank.width, 100 * Math.PI - 3, 1e-9));
  it("withRootGap meets the cut's own curve at the new edge", () => {
    const { net } = shopPiece({ seam: { kind: "butt", gap: 4 } }, [slope]);
    const seam = net[0]!.segments.filter(({ owner }) => owner.kind === "seam");
    expect(seam).toHaveLength(2);
    // The front element is the lowest; 2 mm beside it the slope of 45° stands at 120 - 50 cos(2 / 50).
    for (const { from, to } of seam) expectClose(Math.max(from.y, to.y), 120 - 50 * Math.cos(2 / 50), 0.006);
  });
  it("withRootGap refuses a gap that swallows an opening", () => {
    const hole = openingCut({ shape: "round", diameter: 6 }, { height: 60, direction: 6 });
    expect(shopPipe({ seam: { kind: "butt", gap: 30 } }, [hole]).problems).toMatchObject([{ code: "gap-too-wide", field: "fabrication.seam.gap" }]);
  });
  it("withRootGap cuts an opening across the seam", () => {
    const hole = openingCut({ shape: "round", diameter: 30 }, { height: 60 });
    const { problems, pieces } = shopPipe({ seam: { kind: "butt", gap: 4 } }, [hole]);
    expect(problems).toEqual([]);
    expect(pieces[0]!.net[0]!.segments.filter(({ owner }) => owner.kind === "seam")).toHaveLength(4);
  });
});
