import { describe, expect, it } from "vitest";
import { freeCorner } from "../../../src/drawing/board/freeCorner";

const window = { left: 0, right: 100, bottom: 0, top: 60 };
const size = { width: 20, height: 10 };

describe("freeCorner", () => {
  it("is the lower left corner of an empty window", () => {
    expect(freeCorner(window, [], size)).toEqual({ left: 0, right: 20, bottom: 0, top: 10 });
  });

  it("goes to the next corner where one is taken", () => {
    expect(freeCorner(window, [{ left: 5, right: 10, bottom: 5, top: 8 }], size)).toEqual({ left: 80, right: 100, bottom: 0, top: 10 });
    expect(freeCorner(window, [{ left: 10, right: 90, bottom: 5, top: 8 }], size)).toEqual({ left: 0, right: 20, bottom: 50, top: 60 });
  });

  it("is nothing when all are taken or the window is too small", () => {
    expect(freeCorner(window, [{ left: 10, right: 90, bottom: 5, top: 55 }], size)).toBeNull();
    expect(freeCorner(window, [], { width: 120, height: 10 })).toBeNull();
  });
});
