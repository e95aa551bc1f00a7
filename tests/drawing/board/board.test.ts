import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Development, develop } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { boundsOfItem } from "../../../src/drawing/bounds";
import { onSheet } from "../../../src/drawing/place";
import { collisions, textsOf as texts } from "../../support/collisions";
import { developed } from "../../support/developed";
import { randomCases } from "../../support/lawCase";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const EXAMPLES = new URL("../../../src/app/examples/", import.meta.url);
const examples = readdirSync(EXAMPLES).filter((name) => name.endsWith(".json")).map((name) => {
  const outcome = develop(JSON.parse(readFileSync(new URL(name, EXAMPLES), "utf8")));
  if (!outcome.ok) throw new Error(`${name}: ${JSON.stringify(outcome.problems)}`);
  return { name, development: outcome.development };
});

const vent = (attitude: "upright" | "lying", projection: "first" | "third"): Development => {
  const job = pipeJob({ diameter: 90, length: 200, attitude, cuts: [planeCut({ angle: 30, direction: 180, height: 150 }), openingCut({ shape: "round", diameter: 30 }, { direction: 270, height: 60 })] });
  return developed({ ...job, drawing: { ...job.drawing, projection } });
};

describe("board", () => {
  it("keeps inside windows of any shape that are large enough, and fills one side of them", () => {
    for (const { name, development } of examples) {
      for (const [width, height] of [[320, 200], [420, 250], [160, 260], [600, 220]] as const) {
        const { bounds } = board(development, { width, height });
        expect(bounds.left, name).toBeGreaterThanOrEqual(0);
        expect(bounds.bottom, name).toBeGreaterThanOrEqual(0);
        expect(bounds.right, name).toBeLessThanOrEqual(width);
        expect(bounds.top, name).toBeLessThanOrEqual(height);
        expect(Math.max((bounds.right - bounds.left) / width, (bounds.top - bounds.bottom) / height), name).toBeGreaterThan(0.85);
      }
    }
  });

  it("comes out larger than a window that is too small for its lettering", () => {
    const [first] = examples;
    if (!first) throw new Error("no examples");
    const { bounds, scale } = board(first.development, { width: 20, height: 20 });
    expect(scale).toBeGreaterThan(0.05);
    expect(bounds.right - bounds.left).toBeGreaterThan(20);
  });

  it("lets no figure touch another or any line, on the examples and on random pipes", () => {
    for (const { name, development } of examples) {
      for (const [width, height] of [[320, 200], [160, 260]] as const) expect(collisions(board(development, { width, height }).items), name).toEqual([]);
    }
    for (const { name, development } of randomCases(60)) expect(collisions(board(development, { width: 320, height: 200 }).items), name).toEqual([]);
  });

  it("leaves more than half the height of a letter free between the numbers of the stations and the words of the stretch-out", () => {
    for (const { name, development } of examples) {
      const { blocks: { pattern }, lettering } = board(development, { width: 320, height: 200 });
      const upright = pattern.place.turn === 0;
      const words = pattern.items.filter((item) => item.kind === "text" && /stretch-out|side up/.test(item.text)).map(boundsOfItem);
      const numbers = pattern.items.filter((item) => item.kind === "text" && item.ref?.station !== undefined).map(boundsOfItem);
      expect(words, name).toHaveLength(2);
      const inner = Math.max(...words.map((box) => (upright ? box.top : box.right))), outer = Math.min(...numbers.map((box) => (upright ? box.bottom : box.left)));
      expect(outer - inner, name).toBeGreaterThan(0.6 * lettering);
    }
  });

  it("says which face is up, of a template to wrap round a pipe always the outside", () => {
    const face = (fabrication: object, up: "inside" | "outside") => {
      return texts(board(developed(pipeJob({ diameter: 90, length: 200, face: up, fabrication })), { width: 320, height: 200 }).items).map(({ text }) => text).filter((text) => text.endsWith("side up"));
    };
    expect(face({}, "inside")).toEqual(["inside up"]);
    expect(face({}, "outside")).toEqual(["outside up"]);
    expect(face({ purpose: "wrap" }, "inside")).toEqual(["outside up"]);
  });

  it("stands the pattern of an upright pipe at the heights of the front and side view", () => {
    const { blocks, arrangement } = board(vent("upright", "first"), { width: 400, height: 220 });
    expect(arrangement).toBe("projection");
    const level = (place: typeof blocks.front.place) => onSheet(place, { x: 0, y: 77 }).y;
    expect(level(blocks.pattern.place)).toBeCloseTo(level(blocks.front.place), 9);
    expect(level(blocks.side.place)).toBeCloseTo(level(blocks.front.place), 9);
  });

  it("stands the pattern of a lying pipe over the front view, place by place", () => {
    const { blocks } = board(vent("lying", "first"), { width: 200, height: 300, arrangement: "projection" });
    const along = (place: typeof blocks.front.place) => onSheet(place, { x: 0, y: 77 }).x;
    expect(along(blocks.pattern.place)).toBeCloseTo(along(blocks.front.place), 9);
    expect(blocks.pattern.bounds.bottom).toBeGreaterThan(blocks.front.bounds.top);
  });

  it("puts the top view under the front view in first angle and over it in third", () => {
    for (const attitude of ["upright", "lying"] as const) {
      const first = board(vent(attitude, "first"), { width: 400, height: 300 }).blocks;
      const third = board(vent(attitude, "third"), { width: 400, height: 300 }).blocks;
      expect(first.top.bounds.top).toBeLessThan(first.front.bounds.bottom);
      expect(third.top.bounds.bottom).toBeGreaterThan(third.front.bounds.top);
      for (const { front, side } of [first, third]) expect(side.bounds.left).toBeGreaterThan(front.bounds.right);
    }
  });

  it("lets the pattern leave its projection where a narrow window would make the drawing small", () => {
    const narrow = { width: 160, height: 300 };
    const apart = board(vent("upright", "first"), narrow);
    const held = board(vent("upright", "first"), { ...narrow, arrangement: "projection" });
    expect(apart.arrangement).toBe("under");
    expect(held.arrangement).toBe("projection");
    expect(apart.scale).toBeGreaterThan(1.3 * held.scale);
  });

  it("writes every dimension once", () => {
    for (const { name, development } of examples) {
      const { items } = board(development, { width: 320, height: 200 });
      const written = texts(items).filter(({ ref }) => ref?.clause !== "stations" && ref?.clause !== "seam").map(({ text, ref }) => `${text} of ${ref?.clause ?? ""}`);
      expect(written.length, name).toBe(new Set(written).size);
    }
  });

  it("says which diameter is drawn when the sheet has a thickness", () => {
    const thick = pipeJob({ diameter: 90, basis: "outside", thickness: 2, length: 100 });
    expect(texts(board(developed(thick), { width: 320, height: 200 }).items).map(({ text }) => text)).toContain("⌀88 mean");
  });

  it("gives both seam edges the number of station 0 and the stretch-out its length", () => {
    const { items } = board(developed(pipeJob({ diameter: 90, length: 100 })), { width: 320, height: 200 });
    expect(texts(items).map(({ text }) => text)).toContain("stretch-out 282.74");
    expect(texts(items).filter(({ text, ref }) => text === "0" && ref?.clause === "stations")).toHaveLength(5);
  });

  it("takes the caller's words and figures", () => {
    const words = { stretchOut: "Abwicklung", insideUp: "innen", outsideUp: "außen", seam: "Naht", surface: { mean: "mittel", outside: "außen", inside: "innen" } };
    const figures = { length: (mm: number) => mm.toFixed(1).replace(".", ","), angle: (degrees: number) => `${degrees}°` };
    const { items } = board(developed(pipeJob({ diameter: 90, length: 100 })), { width: 320, height: 200, words, figures });
    expect(texts(items).map(({ text }) => text)).toEqual(expect.arrayContaining(["Abwicklung 282,7", "außen", "Naht", "⌀90,0"]));
  });

  it("refuses a window without size", () => {
    expect(() => board(developed(pipeJob({ diameter: 90, length: 100 })), { width: 0, height: 100 })).toThrow(RangeError);
  });
});
