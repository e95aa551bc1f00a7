import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/approximate";
import { shopPipe } from "./pieces";

describe("partList", () => {
  it("partList has a row a piece and a plate, each with its number off", () => {
    const { parts } = shopPipe({ quantity: 3, plates: { top: { fit: "outside", gap: 0 }, bottom: null } });
    expect(parts.map(({ name, kind, quantity }) => [name, kind, quantity])).toEqual([["pipe", "pipe", 3], ["pipe top plate", "plate", 3]]);
    for (const { mass, totalMass } of parts) expectClose(totalMass, 3 * mass, 1e-12);
  });
});
