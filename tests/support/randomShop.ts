import { develop, fabricate, type Development, type EdgeFinish, type Fabrication, type FabricationChoices, type PlateChoice, type SeamJoint } from "../../src/core/index";
import { randomPipe } from "./randomPipe";
import { randomSource, type RandomSource } from "./randomSource";

export interface ShopCase {
  readonly name: string;
  readonly development: Development;
  readonly fabrication: Fabrication;
}

/** The shop's work on the cut pipes numbered `from` to `to` (not included) that can be developed: always the same for the same number. */
export function* randomShop(from: number, to: number): Generator<ShopCase> {
  for (let n = from; n < to; n++) {
    const job = randomPipe(n);
    const outcome = develop({ ...job, fabrication: { ...job.fabrication, ...randomChoices(randomSource(n + 7e5), job.part.diameter) } });
    if (outcome.ok) yield { name: `random pipe ${n}`, development: outcome.development, fabrication: fabricate(outcome.development) };
  }
}

/** Seam, edges, hand, purpose and plates for a pipe of this diameter, widths in proportion to it. */
export function randomChoices(source: RandomSource, diameter: number): Partial<FabricationChoices> {
  return {
    purpose: source.chance(0.2) ? "wrap" : "blank", hand: source.pick(["described", "opposite"]), surface: source.pick(["mean", "outside", "inside", "clear"]),
    quantity: source.whole(1, 9), seam: randomJoint(source, diameter),
    edges: { top: randomFinish(source, diameter), bottom: randomFinish(source, diameter) }, plates: { top: randomPlate(source), bottom: randomPlate(source) },
  };
}

function randomJoint(source: RandomSource, diameter: number): SeamJoint {
  const width = diameter * source.between(0.02, 0.12);
  const share = source.pick([0, 0.5, 1, 1 / 3]);
  return source.pick<SeamJoint>([{ kind: "butt", gap: 0 }, { kind: "butt", gap: width / 8 }, { kind: "lap", width, share }, { kind: "grooved", width: width / 3, share }]);
}

function randomFinish(source: RandomSource, diameter: number): EdgeFinish {
  const width = diameter * source.between(0.02, 0.12);
  return source.pick<EdgeFinish>([
    { kind: "none" }, { kind: "hem", width }, { kind: "double-hem", width: width / 2 }, { kind: "wired", wire: width / 2.5, thickness: source.chance(0.5) },
    { kind: "flange", width, slits: source.pick([0, Math.max(2, width), Math.max(2, 3 * width)]) },
  ]);
}

function randomPlate(source: RandomSource): PlateChoice | null {
  return source.chance(0.5) ? null : { fit: source.pick(["outside", "mean", "inside"]), gap: source.pick([0, 0.5]) };
}
