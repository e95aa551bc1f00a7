import { describe, expect, it } from "vitest";
import { flattenSegments, type FabricatedPiece, type Vec2 } from "../../src/core/index";
import { fabricate } from "../../src/core/fabricate";
import { expectAllClose } from "../support/approximate";
import { chainDistance } from "../support/chainDistance";
import { firstCrossing } from "../support/crossings";
import { randomShop } from "../support/randomShop";

// Every kind of seam, edge, hand, purpose and plate on random pipes.

const COUNT = 30;

const cases = [...randomShop(0, COUNT)];

/** Closed runs of points of the cut lines, within 0.002 mm. */
const runsOf = ({ contours }: Pick<FabricatedPiece, "contours">) => contours.map(({ segments }) => flattenSegments(segments, 0.002).slice(0, -1));

/** Whether a point lies inside an odd number of closed runs. */
const holds = (runs: readonly (readonly Vec2[])[], { x, y }: Vec2) => runs.filter((run) => {
  const crossed = run.slice(1).filter((b, i) => {
    const a = run[i]!;
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y);
  });
  return crossed.length % 2 === 1;
}).length % 2 === 1;

describe("the cut lines of a random job", () => {
  it("cross neither themselves nor each other by more than 0.02 mm", () => {
    for (const { name, fabrication } of cases) {
      for (const piece of fabrication.pieces) expect(firstCrossing(runsOf(piece), 0.02), name).toBeNull();
      for (const { contour } of fabrication.plates) expect(firstCrossing(runsOf({ contours: [contour] }), 0.02), `${name}, plate`).toBeNull();
    }
  });

  it("have the bend and seam lines on the sheet, none in an opening, their ends on its edges or the net ones", () => {
    let count = 0;
    for (const { name, fabrication } of cases) {
      for (const piece of fabrication.pieces) {
        const cut = runsOf(piece).map((run) => [...run, run[0]!]);
        const edges = [...cut, ...piece.net.map(({ segments }) => flattenSegments(segments, 0.002))];
        const away = (lines: readonly (readonly Vec2[])[], point: Vec2) => Math.min(...lines.map((line) => chainDistance(line, point)));
        for (const mark of piece.marks) {
          if (mark.kind !== "fold" && mark.kind !== "seam") continue;
          const points = flattenSegments(mark.path, 0.5);
          for (const end of [points[0]!, points.at(-1)!]) expect(away(edges, end), `${name}: end of a ${mark.kind} at ${mark.place}`).toBeLessThan(0.02);
          for (const point of points) expect(holds(cut, point) || away(cut, point) < 0.02, `${name}: ${mark.kind} at ${mark.place}`).toBe(true);
          count += 1;
        }
      }
    }
    expect(count).toBeGreaterThan(COUNT);
  });

  it("hold no number that is none, nor do marks, plates and the part list", () => {
    for (const { name, fabrication } of cases) {
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
    for (const { name, development, fabrication } of cases.slice(0, COUNT / 3)) {
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
