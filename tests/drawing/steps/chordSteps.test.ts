import { describe, expect, it } from "vitest";
import { chordSteps } from "../../../src/drawing/steps/chordSteps";
import { expectClose } from "../../support/approximate";

describe("chordSteps", () => {
  // Derived, elementary: n chords of a circle are n sin(π / n) / π of its length; on ⌀100 they are short by 3.5764, 2.0148, 0.8964 mm.
  for (const [count, short] of [[12, 3.5764], [16, 2.0148], [24, 0.8964]] as const) {
    it(`of ${count} on ⌀100 are ${short} mm short`, () => expectClose(chordSteps(50, count).short, short, 1e-4));
  }

  it("of six are as long as the radius", () => expectClose(chordSteps(45, 6).chord, 45, 1e-12));

  it("refuses what is no circle or no division", () => {
    expect(() => chordSteps(0, 12)).toThrow(RangeError);
    expect(() => chordSteps(NaN, 12)).toThrow(RangeError);
    expect(() => chordSteps(10, 1)).toThrow(RangeError);
  });
});
