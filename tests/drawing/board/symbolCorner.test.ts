import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { develop } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { boundsOf } from "../../../src/drawing/bounds";
import { boxesOverlap, growBox } from "../../../src/drawing/box";
import { projectionSymbol } from "../../../src/drawing/projectionSymbol";
import { symbolCorner } from "../../../src/drawing/board/symbolCorner";

const EXAMPLES = new URL("../../../src/app/examples/", import.meta.url);

describe("symbolCorner", () => {
  const window = { left: 0, right: 300, bottom: 0, top: 180 };
  for (const name of readdirSync(EXAMPLES).filter((file) => file.endsWith(".json"))) {
    const outcome = develop(JSON.parse(readFileSync(new URL(name, EXAMPLES), "utf8")));
    if (!outcome.ok) throw new Error(name);
    const { development } = outcome;
    const drawn = board(development, { width: window.right, height: window.top });
    const corner = symbolCorner(drawn, window);

    it(`holds the symbol inside the window and off the drawing of ${name}`, () => {
      if (!corner) throw new Error("no corner");
      const symbol = boundsOf(projectionSymbol(development.job.drawing.projection, corner.at, corner.scale));
      expect(boxesOverlap(growBox(symbol, -1e-9), window)).toBe(true);
      for (const [part, limit] of [["left", 1], ["bottom", 1], ["right", -1], ["top", -1]] as const) expect(limit * (symbol[part] - corner.bounds[part])).toBeGreaterThanOrEqual(-1e-9);
      for (const { bounds } of Object.values(drawn.blocks)) expect(boxesOverlap(symbol, bounds)).toBe(false);
    });
  }

  it("is nothing where the drawing fills the window", () => {
    const outcome = develop(JSON.parse(readFileSync(new URL("1-lean-to-vent.json", EXAMPLES), "utf8")));
    if (!outcome.ok) throw new Error("the example");
    const drawn = board(outcome.development, { width: 300, height: 180 });
    expect(symbolCorner(drawn, drawn.blocks.pattern.bounds)).toBeNull();
  });
});
