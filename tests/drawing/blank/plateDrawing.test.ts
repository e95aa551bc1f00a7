import { describe, expect, it } from "vitest";
import { pathArea } from "../../../src/core/index";
import { plateDrawing } from "../../../src/drawing/blank/plateDrawing";
import { shopPipe, slope } from "../../core/fabricate/pieces";
import { collisions, textsOf } from "../../support/collisions";
import { expectClose } from "../../support/approximate";
import { planeCut, shapedCut } from "../../support/pipeJob";
import { randomShop } from "../../support/randomShop";

const plates = { top: { fit: "mean", gap: 0 }, bottom: { fit: "inside", gap: 1 } } as const;
const [ellipse, disc] = shopPipe({ plates }, [slope]).plates;
const words = (plate: NonNullable<typeof disc>) => textsOf(plateDrawing(plate)).map(({ text }) => text);

describe("plateDrawing", () => {
  it("draws an ellipse by its axes, with its high side", () => {
    // Semi-axes r and r / cos 45°.
    expect(words(ellipse!)).toEqual(expect.arrayContaining(["100 × 141.42", "high side", "seen from above"]));
  });
  it("draws a disc by its diameter less the gap, with no side higher than another", () => {
    expect(words(disc!)).toEqual(expect.arrayContaining(["⌀96", "gap 1"]));
    expect(words(disc!)).not.toContain("high side");
    const [cut] = plateDrawing(disc!);
    expectClose(cut?.kind === "path" ? pathArea(cut.segments) : NaN, Math.PI * 48 ** 2, 1e-6);
  });
  it("calls no side of a level plate high, also where a slope takes part of it", () => {
    const { plates: made } = shopPipe({ plates: { top: { fit: "mean", gap: 0 }, bottom: null } }, [planeCut({ angle: 45, direction: 180, height: 180 })]);
    expect(made.map(({ shape }) => shape)).toEqual(["shaped", "shaped"]);
    expect(made.map((plate) => words(plate).includes("high side"))).toEqual(made.map(({ semiAxes }) => semiAxes.long > semiAxes.short));
    expect(made.filter(({ semiAxes }) => semiAxes.long > semiAxes.short)).toHaveLength(1);
  });
  it("of a shaped end draws its bends, one line for each, and says that it is bent", () => {
    for (const [profile, bends] of [[{ shape: "vee", angle: 90, centre: 0, height: 120 }, 1], [{ shape: "step", low: 100, high: 140, rising: "right", position: 20 }, 2], [{ shape: "hollow", radius: 80, centre: 0, height: 120 }, 0]] as const) {
      const [plate] = shopPipe({ plates: { top: { fit: "outside", gap: 1 }, bottom: null } }, [shapedCut(profile)]).plates;
      const items = plateDrawing(plate!);
      expect(items.filter((item) => item.kind === "path" && item.pen === "bend line")).toHaveLength(bends);
      expect(words(plate!)).toEqual(expect.arrayContaining(["bend to the profile", "seen from above", "gap 1"]));
      expect(collisions(items)).toEqual([]);
    }
  });
  it("lets no word touch another or any line", () => {
    for (const plate of [ellipse!, disc!]) expect(collisions(plateDrawing(plate))).toEqual([]);
    for (const { name, fabrication } of randomShop(0, 25)) {
      for (const plate of fabrication.plates) expect(collisions(plateDrawing(plate)), name).toEqual([]);
    }
  });
});
