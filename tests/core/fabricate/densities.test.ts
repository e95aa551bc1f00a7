import { describe, it } from "vitest";
import { sheetMass } from "../../../src/core/fabricate/densities";
import { expectClose } from "../../support/approximate";

describe("sheetMass", () => {
  it("sheetMass of a square metre of 1 mm steel is 7.85 kg", () => expectClose(sheetMass(1e6, 1, 7850), 7.85, 1e-12));
});
