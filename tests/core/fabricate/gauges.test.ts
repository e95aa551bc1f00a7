import { describe, expect, it } from "vitest";
import { GAUGES, gaugeOf, gaugeThickness } from "../../../src/core/fabricate/gauges";
import type { GaugeTable } from "../../../src/core/job/fabricationChoices";
import { expectClose } from "../../support/approximate";

describe("GAUGES", () => {
  it.each(Object.entries(GAUGES))("GAUGES of %s grow thinner with the number", (_, { inches }) => {
    const list = [...inches.values()];
    expect(list.length).toBeGreaterThanOrEqual(30);
    list.slice(1).forEach((thickness, i) => expect(thickness).toBeLessThan(list[i]!));
  });
  it("GAUGES have names of their own", () => expect(new Set(Object.values(GAUGES).map(({ name }) => name)).size).toBe(6));
});

describe("gaugeThickness", () => {
  it("gaugeThickness counts noughts", () => {
    expectClose(gaugeThickness("us-standard", "0000000")!, 12.7, 1e-12);
    expectClose(gaugeThickness("brown-and-sharpe", "0000")!, 11.684, 1e-9);
  });
  it.each([["us-standard", "99"], ["imperial-wire", "-1"], ["birmingham-sheet", ""]] as [GaugeTable, string][])(
    "gaugeThickness of %s %s is null", (table, gauge) => expect(gaugeThickness(table, gauge)).toBeNull(),
  );
});

describe("gaugeOf", () => {
  it("gaugeOf a gauge's own thickness is that gauge", () => {
    for (const table of Object.keys(GAUGES) as GaugeTable[]) {
      for (const gauge of GAUGES[table].inches.keys()) expect(gaugeOf(table, gaugeThickness(table, gauge)!)).toBe(gauge);
    }
  });
  it("gaugeOf a thickness between two gauges is null", () => expect(gaugeOf("manufacturers-standard", 1.5)).toBeNull());
  it("gaugeOf tells the tables apart", () => {
    expect(gaugeOf("us-standard", 1.5875)).toBe("16");
    expect(gaugeOf("manufacturers-standard", 1.5875)).toBeNull();
  });
});
