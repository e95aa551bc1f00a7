import { describe, expect, it } from "vitest";
import { flattenSegments, type FabricatedPiece } from "../../src/core/index";
import { fabricate } from "../../src/core/fabricate";
import { expectAllClose } from "../support/approximate";
import { chainDistance } from "../support/chainDistance";
import { firstCrossing } from "../support/crossings";
import { randomShop } from "../support/randomShop";

// Every kind of seam, edge, hand, purpose and plate on random pipes.

const COUNT = 30;

/** Closed runs of points of the cut lines, within 0.002 mm. */
const runsOf = ({ contours }: Pick<FabricatedPiece, "contours">) => contours.map(({ segments }) => flattenSegments(segments, 0.002).slice(0, -1));

describe("the cut lines of a random job", () => {
  it("cross neither themselves nor each other by more than 0.02 mm", () => {
    for (const { name, fabrication } of randomShop(0, COUNT)) {
      for (const piece of fabrication.pieces) expect(firstCrossing(runsOf(piece), 0.02), name).toBeNull();
      for (const { contour } of fabrication.plates) expect(firstCrossing(runsOf({ contours: [contour] }), 0.02), `${name}, plate`).toBeNull();
    }
  });

  it("hold no number that is none, nor do marks, plates and the part list", () => {
    for (const { name, fabrication } of randomShop(0, COUNT)) {
      const { pieces, ...rest } = fabrication;
      const bad: string[] = [];
      JSON.stringify({ ...rest, pieces: pieces.map(({ piece: _, ...one }) => one) }, (key, value: unknown) => {
        if (typeof value === "number" && !Number.isFinite(value)) bad.push(key);
        return value;
      });
      expect(bad, name).toEqual([]);
    }
  });

  it("of the opposite hand are mirrored with every mark", () => {
    for (const { name, development, fabrication } of randomShop(0, COUNT / 3)) {
      const { fabrication: choices } = development.job;
      const hand = choices.hand === "opposite" ? "described" : "opposite";
      // Shares of a seam go by the sheet's own edges, so that only an even one mirrors onto itself.
      if (choices.seam.kind !== "butt" && choices.seam.share !== 0.5) continue;
      const other = fabricate({ ...development, job: { ...development.job, fabrication: { ...choices, hand } } });
      fabrication.pieces.forEach((piece, i) => {
        const mirror = other.pieces[i]!;
        expectAllClose([mirror.blank.netArea, mirror.blank.height], [piece.blank.netArea, piece.blank.height], 1e-3 * piece.blank.height + 1e-6 * piece.blank.netArea, name);
        const { girth } = piece.piece.pattern;
        const rims = runsOf(piece).map((run) => [...run, run[0]!].map(({ x, y }) => ({ x: girth - x, y })));
        for (const point of runsOf(mirror).flatMap((run) => run.filter((_, k) => k % 9 === 0))) expect(Math.min(...rims.map((run) => chainDistance(run, point))), name).toBeLessThan(0.03);
        expect(mirror.marks.map(({ kind }) => kind).sort()).toEqual(piece.marks.map(({ kind }) => kind).sort());
      });
    }
  });
});
