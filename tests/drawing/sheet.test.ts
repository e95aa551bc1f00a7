import { describe, expect, it } from "vitest";
import type { Item } from "../../src/drawing/display";
import { boundsOf } from "../../src/drawing/bounds";
import { paperNamed } from "../../src/drawing/papers";
import { sheets } from "../../src/drawing/sheet";
import { developed } from "../support/developed";
import { openingCut, pipeJob } from "../support/pipeJob";

const small = developed(pipeJob({ diameter: 40, length: 80, stations: 8 }));
const large = developed(pipeJob({ diameter: 300, length: 700, cuts: [openingCut({ shape: "round", diameter: 60 }, { height: 300 })] }));

const written = (items: readonly Item[]): string[] => items.flatMap((item) => (item.kind === "text" ? [item.text] : item.kind === "group" ? written(item.items) : []));

describe("sheets", () => {
  it("takes the smallest paper of the family that holds the pattern in one piece", () => {
    expect(sheets(small, { family: "iso" })).toMatchObject({ kind: "one", paper: "A4" });
    expect(sheets(small, { family: "us" })).toMatchObject({ kind: "one", paper: "Letter" });
    expect(sheets(large, { family: "iso" })).toMatchObject({ kind: "one", paper: "A0" });
  });

  it("draws the pattern at its true size", () => {
    const [page] = sheets(small, { family: "iso" }).pages;
    const outline = boundsOf(page?.items.filter((item) => item.kind === "path" && item.pen === "outline") ?? []);
    expect(outline.right - outline.left).toBeCloseTo(40 * Math.PI, 9);
    expect(outline.top - outline.bottom).toBeCloseTo(80, 9);
  });

  it("keeps everything 10 mm off the edges of the paper", () => {
    for (const set of [sheets(small, { family: "iso" }), sheets(large, { family: "iso", paper: "A4" })]) {
      for (const { width, height, items } of set.pages) {
        const { left, right, bottom, top } = boundsOf(items);
        expect(left).toBeGreaterThanOrEqual(10 - 1e-9);
        expect(bottom).toBeGreaterThanOrEqual(10 - 1e-9);
        expect(right).toBeLessThanOrEqual(width - 10 + 1e-9);
        expect(top).toBeLessThanOrEqual(height - 10 + 1e-9);
      }
    }
  });

  it("lays tiles over the chosen paper, with a cover first, named by row and column", () => {
    const { kind, paper, pages, landscape } = sheets(large, { family: "iso", paper: "A4" });
    expect({ kind, paper }).toEqual({ kind: "tiles", paper: "A4" });
    expect(pages.slice(0, 3).map(({ name }) => name)).toEqual(["cover", "A1", "A2"]);
    const { width, height } = paperNamed("A4");
    for (const page of pages) expect([page.width, page.height]).toEqual(landscape ? [height, width] : [width, height]);
  });

  it("lets neighbouring tiles share 10 mm and puts their marks on the same places of the pattern", () => {
    const { pages } = sheets(large, { family: "iso", paper: "A4" });
    const page = (name: string) => pages.find((one) => one.name === name)?.items ?? [];
    const group = (items: readonly Item[]) => items.find((item) => item.kind === "group");
    const marks = (items: readonly Item[]) => {
      const moved = group(items)?.move;
      if (!moved) throw new Error("no artwork");
      return items.flatMap((item) => (item.kind === "circle" && item.pen === "match mark" ? [`${(item.centre.x - moved.x).toFixed(6)} ${(item.centre.y - moved.y).toFixed(6)}`] : []));
    };
    const [a, b] = [page("A1"), page("A2")];
    const clipA = group(a), clipB = group(b);
    if (!clipA || !clipB) throw new Error("no artwork");
    expect(clipA.clip.right - clipA.move.x - (clipB.clip.left - clipB.move.x)).toBeCloseTo(10, 9);
    expect(marks(a).filter((mark) => marks(b).includes(mark))).toHaveLength(2);
  });

  it("says on every page to check the ruler, and on the first what the piece is", () => {
    const { pages } = sheets(large, { family: "iso", paper: "A4" });
    for (const { items } of pages) expect(written(items).join(" ")).toContain("Check the 100 mm ruler before cutting.");
    const cover = written(pages[0]?.items ?? []).join(" ");
    for (const words of ["piece 1 of 1", "⌀300 mean", "scale 1:1", "net, no allowances", "outside up", "seam at the front", "12 stations", "gloves"]) expect(cover).toContain(words);
  });

  it("shortens a title that is too long for the paper", () => {
    const job = { ...pipeJob({ diameter: 40, length: 80 }), title: "W".repeat(120) };
    const [page] = sheets(developed(job), { family: "iso" }).pages;
    expect(boundsOf(page?.items ?? []).right).toBeLessThanOrEqual((page?.width ?? 0) - 10 + 1e-9);
  });
});
