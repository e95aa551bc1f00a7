import { describe, expect, it } from "vitest";
import { TURN, angleBetween, degrees, radians, wrapTurn } from "../../../src/core/numeric/angle";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";

describe("radians and degrees", () => {
  it("radians(180) is π", () => expect(radians(180)).toBe(Math.PI));
  it("degrees(π / 2) is 90", () => expect(degrees(Math.PI / 2)).toBe(90));
  it("degrees(radians(x)) is x for every whole degree", () => {
    for (let x = -720; x <= 720; x++) expectClose(degrees(radians(x)), x, 1e-12);
  });
});

describe("wrapTurn", () => {
  it("wrapTurn(-π / 2) is three quarters of a turn", () => expectClose(wrapTurn(-Math.PI / 2), 1.5 * Math.PI, 1e-15));
  it("wrapTurn(2π) is 0", () => expect(wrapTurn(TURN)).toBe(0));
  it("wrapTurn of the least negative number is 0, not a whole turn", () => expect(wrapTurn(-Number.MIN_VALUE)).toBe(0));
  it("wrapTurn of what lies a last bit below so many turns lies in [0, 2π)", () => {
    for (let turns = 1; turns < 2000; turns++) {
      for (const angle of [turns * TURN * (1 - 2 ** -53), -turns * TURN * (1 + 2 ** -52)]) {
        const wrapped = wrapTurn(angle);
        expect(wrapped >= 0 && wrapped < TURN).toBe(true);
      }
    }
  });
  it("wrapTurn of any angle lies in [0, 2π)", () => {
    const source = randomSource(1);
    for (let n = 0; n < 2000; n++) {
      const wrapped = wrapTurn(source.between(-1000, 1000));
      expect(wrapped >= 0 && wrapped < TURN).toBe(true);
    }
  });
  it("wrapTurn of any angle has the same sine and cosine", () => {
    const source = randomSource(2);
    for (let n = 0; n < 2000; n++) {
      const angle = source.between(-100, 100);
      expectClose(Math.sin(wrapTurn(angle)), Math.sin(angle), 1e-13);
      expectClose(Math.cos(wrapTurn(angle)), Math.cos(angle), 1e-13);
    }
  });
});

describe("angleBetween", () => {
  it("angleBetween(350°, 10°) is 20°", () => expectClose(angleBetween(radians(350), radians(10)), radians(20), 1e-14));
  it("angleBetween of opposite angles is π", () => expectClose(angleBetween(1, 1 + Math.PI), Math.PI, 1e-15));
  it("angleBetween is the same in either order and never above π", () => {
    const source = randomSource(3);
    for (let n = 0; n < 1000; n++) {
      const [a, b] = [source.between(-20, 20), source.between(-20, 20)];
      expectClose(angleBetween(a, b), angleBetween(b, a), 1e-14);
      expect(angleBetween(a, b)).toBeLessThanOrEqual(Math.PI);
    }
  });
});
