import { describe, expect, it } from "vitest";
import { radians } from "../../../src/core/numeric/angle";
import { cleanAngle } from "../../../src/core/numeric/cleanAngle";
import { expectClose } from "../../support/approximate";

describe("cleanAngle", () => {
  it("takes the last wrong bits off a whole degree", () => expectClose(cleanAngle(radians(37) + 3e-15), radians(37), 1e-15));
  it("gives the same number from either side of a whole millionth of a degree", () => {
    for (let d = 1; d < 360; d++) expect(cleanAngle(radians(d + 0.000123) + 1e-13)).toBe(cleanAngle(radians(d + 0.000123) - 1e-13));
  });
  it("leaves an angle that is 1e-11 away as it is", () => expect(cleanAngle(radians(37) + 1e-11)).toBe(radians(37) + 1e-11));
  it("brings what is just below 0 to 0", () => expect(cleanAngle(-1e-13)).toBe(0));
  it("brings what is just below a turn to 0", () => expect(cleanAngle(2 * Math.PI - 1e-13)).toBe(0));
});
