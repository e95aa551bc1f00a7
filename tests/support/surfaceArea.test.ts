import { describe, it } from "vitest";
import { expectClose } from "./approximate";
import { integrateTurn } from "./surfaceArea";

describe("integrateTurn", () => {
  it("integrates a wave to its mean", () => expectClose(integrateTurn((theta) => 5 + Math.sin(3 * theta), 1e-9), 10 * Math.PI, 1e-8));
  it("integrates a jump", () => expectClose(integrateTurn((theta) => (theta > 1 && theta < 3 ? 7 : 0), 1e-7), 14, 1e-6));
  it("integrates a half circle with upright ends", () => {
    expectClose(integrateTurn((theta) => Math.sqrt(Math.max(0, 1 - (theta - 3) ** 2)), 1e-8), Math.PI / 2, 1e-7);
  });
});
