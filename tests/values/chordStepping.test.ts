// What is lost by stepping chords round the circle, and by straight lines between stations. All derived, elementary.
import { describe, it } from "vitest";
import { adequacy, type Piece } from "../../src/core/index";
import { expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { pipeJob, planeCut } from "../support/pipeJob";

/** Pipe of r = 50 cut at 45°, highest in front, through the axis at `height`; stations numbered from `seam`. */
function mitre(stations: number, height: number, seam: "front" | "right"): Piece {
  return developedPipe(pipeJob({ diameter: 100, length: height + 60, stations, seam: { at: seam }, cuts: [planeCut({ angle: 45, height })] }));
}

describe("the girth lost by stepping chords", () => {
  // DIS-01, derived: n chords of the circle are n sin(pi / n) / pi of its length.
  const factors = [[12, 0.98861593], [16, 0.99358685], [24, 0.99714666], [32, 0.99839439], [48, 0.99928621]] as const;
  for (const [count, factor] of factors) {
    it(`leaves ${factor} of it with ${count} stations`, () => {
      expectClose(1 - adequacy(mitre(count, 100, "front"), "top", { tolerance: 0.5 }).chordLossRatio, factor, 1e-8);
    });
    it(`is not lost by the pattern with ${count} stations, whose girth is pi d`, () => expectClose(mitre(count, 100, "front").pattern.girth, 314.15926535898, 1e-9));
    it(`is not lost by the ${count} stations, which lie pi d / ${count} apart`, () => {
      const { stations } = mitre(count, 100, "front");
      for (let index = 0; index < count; index += 1) expectClose(stations[index + 1]!.girth - stations[index]!.girth, 314.15926535898 / count, 1e-9);
    });
  }

  // DIS-02, derived: D = 100 mm.
  for (const [count, short] of [[12, 3.5764], [16, 2.0148], [24, 0.8964]] as const) {
    it(`is ${short} mm with ${count} stations on 100 mm diameter`, () => {
      expectClose(adequacy(mitre(count, 100, "front"), "top", { tolerance: 0.5 }).chordLoss, short, 1e-4);
    });
  }
});

describe("straight lines between the stations", () => {
  // DIS-03, derived: the area under a half wave by straight segments is (pi / n) cot(pi / n) of the true 2 r h.
  for (const [count, factor] of [[12, 0.97704862], [16, 0.9871158], [24, 0.99428189]] as const) {
    it(`show ${factor} of the area of a hoof with ${count} stations`, () => {
      const piece = mitre(count, 0, "right");
      const lengths = piece.stations.slice(0, -1).map((station) => station.length);
      const area = (lengths.reduce((a, b) => a + b) * piece.pattern.girth) / count;
      expectClose(area / 5000, factor, 1e-8);
    });
  }

  // DIS-04, derived: edge of a 45° mitre, r = 50, by n straight segments; the true edge is 382.01978 (CYL-08 times 50).
  for (const [count, length] of [[12, 380.6608], [16, 381.25287], [24, 381.6782], [48, 381.93427]] as const) {
    it(`show ${length} mm of the edge of a 45° mitre with ${count} stations`, () => {
      const { stations } = mitre(count, 100, "front");
      let sum = 0;
      for (let index = 0; index < count; index += 1) sum += Math.hypot(stations[index + 1]!.girth - stations[index]!.girth, stations[index + 1]!.top! - stations[index]!.top!);
      expectClose(sum, length, 1e-4);
    });
  }
});
