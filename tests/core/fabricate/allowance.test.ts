import { describe, expect, it } from "vitest";
import { allowancesOf, wiredParts } from "../../../src/core/fabricate/allowance";
import type { FabricationChoices } from "../../../src/core/index";

const PLAIN: Pick<FabricationChoices, "seam" | "edges"> = { seam: { kind: "butt", gap: 2 }, edges: { top: { kind: "none" }, bottom: { kind: "none" } } };

describe("allowancesOf", () => {
  it("allowancesOf a butt seam and plain edges are none", () => expect(allowancesOf(PLAIN, 1)).toEqual([]));
  it("allowancesOf a lap on one edge only leave the other out", () =>
    expect(allowancesOf({ ...PLAIN, seam: { kind: "lap", width: 10, share: 1 } }, 1)).toEqual([
      { place: "seam-start", kind: "lap", width: 10, parts: [{ factor: 1, size: 10, what: "width" }] },
    ]));
  it("allowancesOf a double hem show their sum", () =>
    expect(allowancesOf({ ...PLAIN, edges: { top: { kind: "double-hem", width: 5 }, bottom: { kind: "none" } } }, 1)).toEqual([
      { place: "top", kind: "double-hem", width: 10, parts: [{ factor: 2, size: 5, what: "width" }] },
    ]));
  it("allowancesOf a grooved seam share three widths", () =>
    expect(allowancesOf({ ...PLAIN, seam: { kind: "grooved", width: 4, share: 0.25 } }, 1).map(({ width }) => width)).toEqual([3, 9]));
});

describe("wiredParts", () => {
  it("wiredParts name wire and thickness apart", () =>
    expect(wiredParts(3, 0.8)).toEqual([{ factor: 2.5, size: 3, what: "wire" }, { factor: 1, size: 0.8, what: "thickness" }]));
  it("wiredParts leave the thickness out unless it is asked for", () => expect(wiredParts(3, null)).toHaveLength(1));
});
