import { describe, expect, it } from "vitest";
import { pathArea, pathLength, type FabricatedPiece } from "../../../src/core/index";
import { blankDrawing } from "../../../src/drawing/blank/blankDrawing";
import type { Item, PathItem } from "../../../src/drawing/display";
import { shopPiece, slope } from "../../core/fabricate/pieces";
import { expectClose } from "../../support/approximate";
import { collisions, textsOf } from "../../support/collisions";
import { openingCut } from "../../support/pipeJob";
import { randomShop } from "../../support/randomShop";

const none = { kind: "none" } as const;
const allRound = { seam: { kind: "grooved", width: 6, share: 0 }, edges: { top: { kind: "flange", width: 10, slits: 15 }, bottom: { kind: "wired", wire: 3.2, thickness: true } } } as const;
const hole = openingCut({ shape: "round", diameter: 30 }, { direction: 90, height: 60 });

const paths = (items: readonly Item[], pen: string): PathItem[] => items.filter((item): item is PathItem => item.kind === "path" && item.pen === pen);
const words = (piece: FabricatedPiece) => textsOf(blankDrawing(piece)).map(({ text }) => text);

describe("blankDrawing", () => {
  it("draws every cut line as one closed path that measures what the piece measures", () => {
    const piece = shopPiece(allRound, [slope, hole]);
    const cut = [...paths(blankDrawing(piece), "outline"), ...paths(blankDrawing(piece), "opening")];
    expect(cut.map(({ closed }) => closed)).toEqual([true, true]);
    expectClose(cut.reduce((sum, { segments }) => sum + pathArea(segments), 0), piece.blank.blankArea, 1e-9 * piece.blank.blankArea);
  });
  it("draws slits, bend lines and the seam's net line with pens of their own", () => {
    const items = blankDrawing(shopPiece(allRound, [slope]));
    // Flange, wired edge, and the two hooks of the seam.
    expect(paths(items, "bend line")).toHaveLength(4);
    expect(paths(items, "seam line")).toHaveLength(1);
    expect(paths(items, "slit").length).toBeGreaterThan(10);
    for (const { segments } of paths(items, "slit")) expectClose(pathLength(segments), 10, 1e-9);
  });
  it("says the sum of every allowance, the quarters, the stations, the face and the arrows", () => {
    expect(words(shopPiece(allRound, [slope]))).toEqual(expect.arrayContaining([
      "groove 3 × 6 = 18", "flange 10", "wired edge 2.5 × 3.2 + 2 = 10", "front", "right", "back", "left", "0", "11", "seam", "top", "roll", "outside up", "blank to roll",
    ]));
  });
  it("says that nothing was added, what was taken off the seam, and the other hand", () => {
    expect(words(shopPiece({ hand: "opposite", seam: { kind: "butt", gap: 2 } }))).toEqual(expect.arrayContaining(["net, no allowances", "root gap 2", "opposite hand"]));
  });
  it("says of a wrap that it is one, and gives it no arrow to roll along", () => {
    const said = words(shopPiece({ purpose: "wrap" }));
    expect(said).toContain("template to wrap round");
    expect(said).not.toContain("roll");
  });
  it("draws no upright line along another: not a tick on the seam's edge, not a quarter line on it", () => {
    const items = blankDrawing(shopPiece({}, [slope]));
    const upright = items.flatMap((item) => (item.kind === "path" && item.pen !== "sheet mark" ? item.segments : [])).filter(({ kind, from, to }) => kind === "line" && Math.abs(from.x - to.x) < 1e-6)
      .map(({ from, to }) => ({ x: from.x, low: Math.min(from.y, to.y), high: Math.max(from.y, to.y) }));
    expect(upright.length).toBeGreaterThan(20);
    upright.forEach((a, i) => {
      for (const b of upright.slice(i + 1)) expect(Math.abs(a.x - b.x) > 1e-6 || Math.min(a.high, b.high) - Math.max(a.low, b.low) < 1e-6, `${a.x}`).toBe(true);
    });
  });
  it("numbers every how manyth of stations that stand close together, the same along both ends", () => {
    const items = blankDrawing(shopPiece({}, [], { stations: 120 }));
    const numbers = textsOf(items).map(({ text }) => Number(text)).filter((number) => Number.isInteger(number));
    expect(numbers.every((number) => number % 5 === 0)).toBe(true);
    expect(numbers.length).toBeGreaterThan(30);
    expect(paths(items, "station tick").length).toBeGreaterThan(200);
  });
  it("lets no word touch another or any line", () => {
    for (const piece of [shopPiece(), shopPiece(allRound, [slope, hole]), shopPiece({ edges: { top: none, bottom: { kind: "double-hem", width: 4 } }, hand: "opposite" }, [slope], { stations: 48 })]) {
      expect(collisions(blankDrawing(piece))).toEqual([]);
    }
  });
  it("lets no word touch another or any line on random pipes", () => {
    for (const { name, fabrication } of randomShop(0, 25)) {
      for (const piece of fabrication.pieces) {
        const items = blankDrawing(piece);
        expect(collisions(items), name).toEqual([]);
      }
    }
  });
});
