import { describe, expect, it } from "vitest";
import { openingCutter, openingOutline } from "../../../src/core/part/openingCutter";
import { pathArea } from "../../../src/core/geometry/path";
import { expectAllClose, expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";

const { PI } = Math;
const centre = { x: 3, y: 80 };
const corners = (outline: ReturnType<typeof openingOutline>): number[] => outline.flatMap(({ from }) => [from.x, from.y]);

describe("openingOutline", () => {
  it("of a round opening has its area, anticlockwise", () => expectClose(pathArea(openingOutline({ shape: "round", diameter: 60 }, centre)), PI * 900, 1e-9));
  it("of a rectangle has its area, anticlockwise, however it is turned", () => {
    for (const turn of [0, 17, 90, -140]) expectClose(pathArea(openingOutline({ shape: "rectangle", width: 30, length: 50, turn }, centre)), 1500, 1e-9);
  });
  it("of a slot has the area of its straight part and a disc, upright and lying", () => {
    for (const [width, length] of [[20, 70], [70, 20]] as const) {
      expectClose(pathArea(openingOutline({ shape: "slot", width, length, turn: 33 }, centre)), 50 * 20 + PI * 100, 1e-9);
    }
  });
  it("of a slot as wide as it is long is round", () => {
    expect(openingOutline({ shape: "slot", width: 40, length: 40, turn: 0 }, centre)).toEqual(openingOutline({ shape: "round", diameter: 40 }, centre));
  });
  it("of a rectangle has its corners half its measures from the centre", () => {
    expectAllClose(corners(openingOutline({ shape: "rectangle", width: 30, length: 50, turn: 0 }, centre)), [-12, 55, 18, 55, 18, 105, -12, 105], 1e-12);
  });
  it("turned a quarter has width and length changed, exactly upright", () => {
    expect(corners(openingOutline({ shape: "rectangle", width: 30, length: 50, turn: 90 }, { x: 0, y: 0 }))).toEqual([25, -15, 25, 15, -25, 15, -25, -15]);
  });
  it("turns anticlockwise", () => {
    const [x, y] = corners(openingOutline({ shape: "rectangle", width: 20, length: 20, turn: 45 }, { x: 0, y: 0 }));
    expectAllClose([x!, y!], [0, -10 * Math.SQRT2], 1e-12);
  });
});

describe("openingCutter", () => {
  const owner = { kind: "cut", index: 0, id: "opening" } as const;
  const cut = openingCut({ shape: "round", diameter: 60 }, { height: 80, direction: 90 });
  it("through the near wall begins at the axis", () => expect(openingCutter(cut, 50, owner).depth).toEqual([0, Infinity]));
  it("through both walls has no depth", () => expect(openingCutter({ ...cut, through: "both" }, 50, owner).depth).toEqual([-Infinity, Infinity]));
  it("goes in its direction", () => expectClose(openingCutter(cut, 50, owner).direction, PI / 2, 1e-15));
  it("is moved by its offset", () => {
    expectAllClose(openingCutter({ ...cut, offset: 7 }, 50, owner).reaches.flatMap(({ from, to }) => [from, to]), [-23, 37, -23, 37], 1e-12);
  });
});
