import { describe, expect, it } from "vitest";
import { placeOnBoard } from "../../../src/app/rollUp/placeOnBoard";
import { board } from "../../../src/drawing/board/board";
import { viewOf } from "../../../src/app/board/view";
import { developed, hole, pipeWith, slant } from "../pipe";

/** The place on a board of this size in CSS pixels, 3 of them a mm. */
function placed(width: number, height: number) {
  const drawn = board(developed(pipeWith([slant, hole])), { width: width / 3, height: height / 3 });
  const view = viewOf(drawn.bounds, width / 3, height / 3);
  return { place: placeOnBoard(drawn, view, { width, height }), drawn, view };
}

describe("placeOnBoard", () => {
  it("is a corner of a wide board that covers none of its blocks", () => {
    const { place, drawn, view } = placed(1080, 620);
    expect(place).not.toBeNull();
    const { left, top, width, height } = place!;
    expect(Math.min(width - 260, height - 140)).toBeGreaterThanOrEqual(-1e-9);
    const px = Math.min(1080 / (view.right - view.left), 620 / (view.top - view.bottom));
    for (const { bounds } of Object.values(drawn.blocks)) {
      const blockLeft = 540 + (bounds.left - (view.left + view.right) / 2) * px, blockTop = 310 - (bounds.top - (view.top + view.bottom) / 2) * px;
      const apart = blockLeft >= left + width || left >= blockLeft + (bounds.right - bounds.left) * px || blockTop >= top + height || top >= blockTop + (bounds.top - bounds.bottom) * px;
      expect(apart).toBe(true);
    }
  });

  it("is nowhere on a small board", () => {
    expect(placed(360, 420).place).toBeNull();
  });
});
