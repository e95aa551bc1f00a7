import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Development, develop } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { PENS } from "../../../src/drawing/pens";
import { fromSheet, onSheet } from "../../../src/drawing/place";
import { drawnAt } from "../../../src/drawing/steps/drawnAt";
import { type Step, steps } from "../../../src/drawing/steps/steps";
import type { Way } from "../../../src/drawing/steps/way";
import { expectClose } from "../../support/approximate";
import { developed } from "../../support/developed";
import { pipeJob, planeCut } from "../../support/pipeJob";

const DESK = { width: 320, height: 200 };

function example(name: string): Development {
  const outcome = develop(JSON.parse(readFileSync(new URL(`../../../src/app/examples/${name}.json`, import.meta.url), "utf8")));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.development;
}

const before = ["data", "views", "circle", "project", "complete", "stretch-out", "elements", "carry", "curve"];
const after = ["line-in", "dimensions"];

/** The order of work of the trade, and in its place the opening of each example. */
const ORDERS: Readonly<Record<string, readonly string[]>> = {
  "1-lean-to-vent": [...before, "opening-branch", ...after],
  "2-ridge-cap": [...before, "opening-air-slots", ...after],
  "3-drying-hood": [...before, "opening-filter-box", ...after],
  "4-chart-lamp": [...before, ...after],
  "5-pier-strut": [...before, "opening-cable-window", ...after],
  "6-mast-sleeve": [...before, "opening-clamp", ...after],
};

const all = (step: Step) => [...step.items, ...step.parts.flatMap(({ items }) => items)];
const thin = (step: Step) => [...step.construction, ...step.parts.flatMap(({ construction }) => construction)];

for (const [name, order] of Object.entries(ORDERS)) {
  describe(`the construction of ${name}`, () => {
    const development = example(name);
    const drawn = board(development, DESK);
    const made: Record<Way, Step[]> = { hand: steps(drawn, development, { way: "hand" }), screen: steps(drawn, development, { way: "screen" }) };

    it("goes in the order of the drawing board, either way", () => {
      expect(made.hand.map((step) => step.name)).toEqual(order);
      expect(made.screen.map((step) => step.name)).toEqual(order);
    });

    it("adds something at each step, and says what", () => {
      for (const step of made.screen) {
        expect(all(step).length + thin(step).length, step.name).toBeGreaterThan(0);
        for (const text of [step.title, step.fresh, step.text]) expect(text).not.toMatch(/undefined|NaN|Infinity|^$/);
      }
    });

    it("adds every item of the board once, and ends with the board", () => {
      expect(new Set(made.screen.flatMap(all))).toEqual(new Set(drawn.items));
      expect(made.screen.flatMap(all)).toHaveLength(drawn.items.length);
      expect(drawnAt(drawn, made.screen, made.screen.length - 1, null).items).toEqual(drawn.items);
    });

    it("takes nothing away from one step, or one station, to the next", () => {
      let shown: ReadonlySet<unknown> = new Set();
      made.hand.forEach((step, i) => {
        for (const station of step.parts.length > 0 ? [...step.parts.map((part) => part.station), null] : [null]) {
          const { construction, items } = drawnAt(drawn, made.hand, i, station);
          const now = new Set<unknown>([...construction, ...items]);
          expect([...shown].filter((item) => !now.has(item))).toEqual([]);
          shown = now;
        }
      });
    });

    it("leaves only thin construction lines standing under the board", () => {
      for (const item of made.hand.flatMap(thin)) expect("pen" in item && PENS[item.pen]).toMatchObject({ width: 0.25, role: "construction" });
    });

    it("goes through every station but the closing one where it goes from station to station", () => {
      const [piece] = development.pieces;
      for (const step of made.screen) {
        if (["project", "complete", "carry"].includes(step.name)) expect(step.parts.map(({ station }) => station)).toEqual(piece!.stations.slice(0, -1).map((_, i) => i));
        else expect(step.parts).toEqual([]);
      }
    });
  });
}

describe("the construction of a vent of ⌀90 cut at 35°, 220 at its highest in the back", () => {
  // Derived: on the element at θ from the front the cut lies at 220 - 45 tan 35° (1 + cos θ).
  const height = (theta: number) => 220 - 45 * Math.tan((35 * Math.PI) / 180) * (1 + Math.cos(theta));
  const development = example("1-lean-to-vent");
  const drawn = board(development, DESK);
  const made = (way: Way) => steps(drawn, development, { way });
  const text = (way: Way, name: string) => made(way).find((step) => step.name === name)!.text;
  const carry = made("screen").find(({ name }) => name === "carry")!;

  it("says the ordinate of each station", () => {
    carry.parts.forEach((part, i) => expect(part.text).toMatch(new RegExp(`^Station ${i}: ordinate ${Number(height((-i * Math.PI) / 8).toFixed(2))}[.,]`)));
  });

  it("says what is kept beside the opening: of 188.49 at the left, 40 less", () => {
    expect(carry.parts[4]!.text).toBe("Station 4: ordinate 188.49, 148.49 of it kept beside the opening.");
  });

  it("marks each ordinate in the pattern where it belongs", () => {
    carry.parts.slice(1).forEach((part, i) => {
      const wanted = onSheet(drawn.blocks.pattern.place, { x: ((i + 1) * Math.PI * 90) / 16, y: height(((i + 1) * Math.PI) / 8) });
      const mark = part.construction.filter((item) => item.kind === "circle").at(-1)!;
      expectClose(mark.centre.x, wanted.x, 1e-9);
      expectClose(mark.centre.y, wanted.y, 1e-9);
    });
  });

  it("gives the loss of chord stepping in mm, by hand as what is stepped, on the screen as what would be lost", () => {
    // Derived: 16 chords of ⌀90 are 16 × 90 sin(π / 16) = 280.93, of π × 90 = 282.74.
    expect(text("hand", "stretch-out")).toContain("16 × 17.56 = 280.93");
    expect(text("hand", "stretch-out")).toContain("1.81 or 0.64 % short");
    expect(text("screen", "stretch-out")).toContain("π × 90 = 282.74");
    expect(text("screen", "stretch-out")).toContain("1.81 short");
  });

  it("names the set-squares that divide the circle by hand, and any number on the screen", () => {
    expect(text("hand", "circle")).toContain("set-squares divide it, and each part is halved");
    expect(text("screen", "circle")).toContain("16 equal parts of 22.5°");
    const twelve = developed(pipeJob({ diameter: 40, length: 60, stations: 12, cuts: [planeCut({ angle: 30, height: 40 })] }));
    expect(steps(board(twelve, DESK), twelve, { way: "hand" })[2]!.text).toContain("30/60 set-square divides it: 30°");
  });

  it("carries the points over the 45° line to the side view, which gives the cut", () => {
    expect(text("screen", "project")).toContain("over the 45° line");
    expect(text("screen", "views")).toContain("The cut of the top is given in the side view.");
  });

  it("draws one station at a time: up to station 4, no later point", () => {
    const order = made("screen");
    const at = order.findIndex(({ name }) => name === "carry");
    const count = (station: number | null) => drawnAt(drawn, order, at, station).construction.length;
    expect(count(4)).toBeLessThan(count(5));
    expect(count(15)).toBe(count(null));
  });
});

describe("the first step of a pipe whose seam lies on the axis", () => {
  for (const attitude of ["upright", "lying"] as const) {
    it(`rules the axis whole, ${attitude}`, () => {
      const development = developed(pipeJob({ diameter: 90, length: 220, attitude, cuts: [planeCut({ angle: 35, direction: 180, height: 180 })] }));
      const drawn = board(development, DESK);
      const [first] = steps(drawn, development, { way: "screen" });
      const { place } = drawn.blocks.front;
      const stretches = [...first!.items, ...first!.construction].flatMap((item) => (item.kind === "path" && item.pen === "centre line" ? item.segments : []))
        .map(({ from, to }) => [from, to].map((point) => fromSheet(place, point)))
        .filter((ends) => ends.every(({ x, y }) => Math.abs(x) < 1e-6 && y > -20 && y < 230))
        .map((ends) => ends.map(({ y }) => y).sort((a, b) => a - b)).sort(([a], [b]) => a! - b!);
      expect(stretches.length).toBeGreaterThan(1);
      expect(stretches[0]![0]).toBeLessThan(0);
      expect(stretches.at(-1)![1]).toBeGreaterThan(180 + 45 * Math.tan((35 * Math.PI) / 180));
      stretches.slice(1).forEach(([from], i) => expectClose(from!, stretches[i]![1]!, 1e-9));
    });
  }
});

describe("the construction of a square pipe", () => {
  const development = developed(pipeJob({ diameter: 40, length: 60 }));
  it("has nothing to project and no view to complete", () => {
    const made = steps(board(development, DESK), development, { way: "screen" });
    expect(made.map(({ name }) => name)).not.toContain("complete");
    expect(made.find(({ name }) => name === "curve")!.text).toContain("square");
  });
});

describe("the construction of a pipe cut in a slanting direction", () => {
  const development = developed(pipeJob({ diameter: 40, length: 80, cuts: [planeCut({ angle: 30, direction: 30, height: 50 })] }));
  it("says that no view gives the cut, and completes both", () => {
    const made = steps(board(development, DESK), development, { way: "screen" });
    expect(made[1]!.text).toContain("No view shows the cut of the top as it is given");
    expect(made.find(({ name }) => name === "complete")!.title).toBe("Complete the front view and the side view");
  });
});

it("steps refuses a piece that does not exist", () => {
  const development = developed(pipeJob({ diameter: 40, length: 60 }));
  expect(() => steps(board(development, DESK), development, { way: "screen", piece: 3 })).toThrow(RangeError);
});
