import { openingCut, pipeJob, planeCut, shapedCut, type Cut, type Job } from "./pipeJob";
import { randomSource, type RandomSource } from "./randomSource";

/**
 * Exercise number `n` of the classroom, always the same: a pipe of 30 to 160 mm cut by a plane, a vee, a hollow or an ogee, often with something
 * more (a cut at the foot, a round opening), 12 stations, critical elements added. What it shall surely have is asked for.
 */
export function exercise(n: number, wanted: { wall?: boolean; plane?: boolean; two?: boolean; corner?: boolean } = {}): Job {
  const source = randomSource(n);
  const diameter = 5 * source.whole(6, 32);
  const length = Math.round(diameter * source.between(1.2, 2.2));
  const thickness = wanted.wall || source.chance(0.4) ? source.pick([0.8, 1, 1.5, 2, 3]) : 0;
  const main = wanted.corner ? vee(source, diameter, length) : wanted.plane || source.chance(0.6) ? plane(source, diameter, length) : source.pick([vee, hollow, ogee])(source, diameter, length);
  const more = wanted.two || source.chance(0.35) ? [source.pick([foot, opening])(source, diameter, length)] : [];
  return pipeJob({
    diameter, length, thickness, basis: source.pick(["outside", "inside", "mean"]), cuts: [main, ...more], critical: true,
    seam: { at: source.pick(["shortest", "shortest", "front", "right", "back"]) }, face: source.pick(["inside", "outside"]),
  });
}

function plane(source: RandomSource, diameter: number, length: number): Cut {
  const angle = source.pick([20, 25, 30, 35, 40, 45, 50]);
  return planeCut({ angle, direction: 15 * source.whole(0, 23), height: Math.round(length - (diameter / 2) * Math.tan((angle * Math.PI) / 180)) });
}

function foot(source: RandomSource, diameter: number): Cut {
  const angle = source.pick([10, 15, 20]);
  return planeCut({ id: "foot", end: "bottom", angle, direction: 15 * source.whole(0, 23), height: Math.round((diameter / 2) * Math.tan((angle * Math.PI) / 180)) });
}

function vee(source: RandomSource, diameter: number, length: number): Cut {
  return shapedCut({ shape: "vee", angle: source.pick([60, 90, 100, 120]), centre: Math.round(source.between(-0.2, 0.2) * diameter), height: Math.round(length - 0.45 * diameter) }, { direction: 15 * source.whole(0, 23) });
}

function hollow(source: RandomSource, diameter: number, length: number): Cut {
  return shapedCut({ shape: "hollow", radius: diameter * source.pick([0.7, 1, 1.5]), centre: Math.round(source.between(-0.15, 0.15) * diameter), height: Math.round(length - 0.4 * diameter) }, { direction: 15 * source.whole(0, 23) });
}

function ogee(source: RandomSource, diameter: number, length: number): Cut {
  return shapedCut({ shape: "ogee", low: Math.round(length - 0.6 * diameter), high: length, rising: source.pick(["left", "right"]), radius: null }, { direction: 15 * source.whole(0, 23) });
}

function opening(source: RandomSource, diameter: number, length: number): Cut {
  return openingCut({ shape: "round", diameter: Math.round(diameter * source.between(0.3, 0.6)) }, { direction: 15 * source.whole(0, 23), height: Math.round(length * 0.28) });
}
