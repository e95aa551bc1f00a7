import { describe, expect, it } from "vitest";
import { insideCircle } from "../../../src/drawing/compared/insideCircle";

describe("insideCircle", () => {
  it("cuts a line through it at both sides", () => {
    expect(insideCircle([{ x: -10, y: 3 }, { x: 10, y: 3 }], 5)).toEqual([[{ x: -4, y: 3 }, { x: 4, y: 3 }]]);
  });

  it("keeps a chain that stays inside as it is", () => {
    const chain = [{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 2, y: 0 }];
    expect(insideCircle(chain, 5)).toEqual([chain]);
  });

  it("makes two chains of one that leaves and comes back", () => {
    const chains = insideCircle([{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 10, y: 1 }, { x: 0, y: 1 }], 5);
    expect(chains).toHaveLength(2);
    expect(chains[0]?.at(-1)).toEqual({ x: 5, y: 0 });
  });

  it("gives nothing of what stays outside or has no length", () => {
    expect(insideCircle([{ x: -10, y: 6 }, { x: 10, y: 6 }], 5)).toEqual([]);
    expect(insideCircle([{ x: 1, y: 1 }, { x: 1, y: 1 }], 5)).toEqual([]);
    expect(insideCircle([{ x: 1, y: 1 }], 5)).toEqual([]);
  });
});
