import { describe, expect, it } from "vitest";
import { freeBox } from "../../src/drawing/freeBox";

const window = { left: 0, right: 100, bottom: 0, top: 60 };
const least = { width: 20, height: 15 };

describe("freeBox", () => {
  it("is the whole window when nothing is taken", () => {
    expect(freeBox(window, [], least)).toEqual(window);
  });

  it("is the largest corner left free", () => {
    const taken = [{ left: 0, right: 100, bottom: 25, top: 60 }, { left: 0, right: 30, bottom: 0, top: 25 }];
    expect(freeBox(window, taken, least)).toEqual({ left: 30, right: 100, bottom: 0, top: 25 });
  });

  it("keeps off what lies partly outside the window, and outside it", () => {
    expect(freeBox(window, [{ left: -10, right: 70, bottom: -5, top: 70 }], least)).toEqual({ left: 70, right: 100, bottom: 0, top: 60 });
    expect(freeBox(window, [{ left: -50, right: -10, bottom: 0, top: 60 }], least)).toEqual(window);
  });

  it("is nothing when no room is large enough", () => {
    expect(freeBox(window, [{ left: 10, right: 90, bottom: 10, top: 50 }], { width: 20, height: 20 })).toBeNull();
  });
});
