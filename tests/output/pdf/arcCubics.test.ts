import { describe, expect, it } from "vitest";
import { type Arc, segmentPoint } from "../../../src/core/index";
import { arcCubics } from "../../../src/output/pdf/arcCubics";

const arc = (radius: number, from: number, to: number): Arc => ({
  kind: "arc", centre: { x: 3, y: -2 }, anticlockwise: to > from,
  from: { x: 3 + radius * Math.cos(from), y: -2 + radius * Math.sin(from) }, to: { x: 3 + radius * Math.cos(to), y: -2 + radius * Math.sin(to) },
});

describe("arcCubics", () => {
  for (const radius of [0.5, 40, 3000]) {
    for (const [from, to] of [[0, 1], [2, -3.5], [0, 2 * Math.PI]] as const) {
      it(`stays within 0.001 mm of an arc of radius ${radius} from ${from} to ${to}, both ends on it`, () => {
        const whole = arc(radius, from, to);
        const cubics = arcCubics(whole, 0.001);
        expect(cubics[0]?.from).toBe(whole.from);
        expect(cubics.at(-1)?.to).toBe(whole.to);
        for (const cubic of cubics) {
          for (let u = 0; u <= 1; u += 1 / 64) {
            const { x, y } = segmentPoint(cubic, u);
            expect(Math.abs(Math.hypot(x - 3, y + 2) - radius)).toBeLessThan(0.001);
          }
        }
      });
    }
  }
});
