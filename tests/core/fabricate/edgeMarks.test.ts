import { describe, expect, it } from "vitest";
import { pathLength, type Mark } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { shopPiece, slope } from "./pieces";

const of = <K extends Mark["kind"]>(marks: readonly Mark[], kind: K) => marks.filter((mark) => mark.kind === kind) as Extract<Mark, { kind: K }>[];
const none = { kind: "none" } as const;

describe("stripMarks", () => {
  it("stripMarks of a hem are the net edge as a fold, pricked at its ends", () => {
    const { marks } = shopPiece({ edges: { top: { kind: "hem", width: 6 }, bottom: none } });
    const folds = of(marks, "fold");
    expect(folds).toHaveLength(1);
    expectClose(pathLength(folds[0]!.path), 100 * Math.PI, 1e-9);
    expect(of(marks, "prick").filter(({ on }) => on === "fold")).toHaveLength(2);
  });
  it("stripMarks of a double hem have a second fold one width out", () => {
    const folds = of(shopPiece({ edges: { top: { kind: "double-hem", width: 6 }, bottom: none } }).marks, "fold");
    expect(folds.map(({ path }) => path[0]!.from.y)).toEqual([200, 206]);
  });
  it("stripMarks of a lap are the net line of the seam", () => {
    const seams = of(shopPiece({ seam: { kind: "lap", width: 10, share: 0.5 } }).marks, "seam");
    expect(seams.map(({ place }) => place).sort()).toEqual(["seam-end", "seam-start"]);
  });
  it("stripMarks of a flange are slit at equal spaces no wider than the pitch, from the net edge to the rim", () => {
    const { marks, blank } = shopPiece({ edges: { top: { kind: "flange", width: 10, slits: 20 }, bottom: none } }, [slope]);
    const slits = of(marks, "slit");
    expect(slits.length).toBeGreaterThan(14);
    for (const { line } of slits) expectClose(pathLength([line]), 10, 1e-9);
    expect(blank.cutLength).toBeGreaterThan(slits.length * 10 + 2 * 314);
  });
  it("stripMarks of a flange without a pitch are not slit", () =>
    expect(of(shopPiece({ edges: { top: { kind: "flange", width: 10, slits: 0 }, bottom: none } }).marks, "slit")).toEqual([]));
});
