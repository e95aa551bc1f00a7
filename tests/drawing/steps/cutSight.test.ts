import { describe, expect, it } from "vitest";
import { endPoints, givingView, isGivenIn } from "../../../src/drawing/steps/cutSight";
import { viewsOf } from "../../../src/drawing/view/views";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";

const first = viewsOf("upright", "first");
const vee = { shape: "vee", angle: 90, centre: 0, height: 20 } as const;

describe("givingView", () => {
  it("is the view that sees a plane as a line", () => {
    expect(givingView(planeCut({ angle: 30, direction: 90, height: 50 }), first)).toBe("front");
    expect(givingView(planeCut({ angle: 30, direction: 180, height: 50 }), first)).toBe("side");
    expect(givingView(planeCut({ angle: 30, direction: 45, height: 50 }), first)).toBeNull();
    expect(givingView(planeCut({ angle: 0, direction: 45, height: 50 }), first)).toBe("front");
  });

  it("is the view that sees a profile true", () => {
    expect(givingView(shapedCut(vee, { direction: 180 }), first)).toBe("front");
    expect(givingView(shapedCut(vee, { direction: 90 }), first)).toBe("side");
  });

  it("is none for an opening", () => {
    expect(givingView(openingCut({ shape: "round", diameter: 10 }, { height: 20 }), first)).toBeNull();
    expect(isGivenIn(planeCut({ angle: 0, height: 5 }), first.top)).toBe(false);
  });
});

describe("endPoints", () => {
  const job = pipeJob({ diameter: 40, length: 80, cuts: [
    shapedCut({ shape: "step", low: 50, high: 70, rising: "right", position: 0 }), openingCut({ shape: "round", diameter: 10 }, { height: 20 }),
  ] });
  const { pieces: [piece] } = developed(job);

  it("are both levels where the edge runs along the element, and both sides of an opening", () => {
    expect(endPoints(job, piece!, piece!.stations[0]!).map(({ z }) => Math.round(z * 1e6) / 1e6)).toEqual([0, 15, 25, 50, 70]);
  });

  it("know their cut, and none on a square end", () => {
    expect(endPoints(job, piece!, piece!.stations[0]!).map(({ cut }) => cut?.id ?? null)).toEqual([null, "opening", "opening", "shaped", "shaped"]);
  });
});
