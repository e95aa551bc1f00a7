import { describe, it } from "vitest";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut, type Cut } from "../../support/pipeJob";

const area = (cuts: readonly Cut[]): number => developedPipe(pipeJob({ diameter: 100, length: 300, cuts })).trimmed.area;
const whole = 2 * Math.PI * 50 * 300;

describe("surfaceArea", () => {
  it("of an uncut pipe is girth times length", () => expectClose(area([]), whole, 1e-7));
  // CYL-02: International Correspondence Schools, Building Trades Pocketbook: half the sum of the heights.
  it("of a truncated pipe from 100 to 200 is π r (100 + 200)", () => expectClose(area([planeCut({ angle: 45, height: 150 })]), Math.PI * 50 * 300, 1e-5));
  // ARC-02: Apostol & Mnatsakanian, Amer. Math. Monthly 114 (2007), examples 7 and 8: 4 r² under a fish-mouth.
  it("under a hollow of the pipe's own radius down to the base is 4 r²", () => {
    expectClose(area([shapedCut({ shape: "hollow", radius: 50, centre: 0, height: 0 })]), 2 * Math.PI * 50 * 50 - 10000, 1e-5);
  });
  // TEE-03: one hole of an equal tee has 4 r².
  it("without the hole of an equal tee is 4 r² less", () => expectClose(area([openingCut({ shape: "round", diameter: 100 }, { height: 150 })]), whole - 10000, 1e-5));
  it("without a rectangle 50 wide and 40 long is a sixth of the girth times 40 less", () => {
    expectClose(area([openingCut({ shape: "rectangle", width: 50, length: 40, turn: 0 }, { height: 150 })]), whole - (2 * Math.PI * 50 * 40) / 6, 1e-6);
  });
  it("without an opening about the contour that touches the base is the same in every whole direction", () => {
    const opening = (direction: number): number => area([openingCut({ shape: "round", diameter: 40 }, { height: 20, offset: -50, direction, through: "both" })]);
    const ahead = opening(0);
    for (let direction = 1; direction < 360; direction++) expectClose(opening(direction), ahead, 1e-4);
  });
  it("without an opening about the contour that touches the base is that of the same opening a little higher", () => {
    const opening = (height: number): number => area([openingCut({ shape: "round", diameter: 40 }, { height, offset: -50, direction: 33, through: "both" })]);
    expectClose(opening(20), opening(21), 1e-4);
  });
});
