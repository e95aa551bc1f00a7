import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/index";
import { CASES, checkRefusal, codesOf, onEach } from "../support/lawCase";
import { openingCut, pipeJob, planeCut, shapedCut, type Cut, type Leg, type Profile } from "../support/pipeJob";
import { randomChain, randomPipe } from "../support/randomPipe";
import { randomSource } from "../support/randomSource";

const cutting = (...cuts: Cut[]): ReturnType<typeof develop> => develop(pipeJob({ diameter: 100, length: 200, cuts }));
const shaped = (profile: Profile): ReturnType<typeof develop> => cutting(shapedCut(profile));
const chain = (start: [number, number], ...legs: ([number, number] | Leg)[]): Profile => ({
  shape: "free", start: { x: start[0], z: start[1] }, legs: legs.map((leg) => ("to" in leg ? leg : { to: { x: leg[0], z: leg[1] } })),
});

describe("develop refuses", () => {
  const refused: readonly (readonly [string, () => ReturnType<typeof develop>, string])[] = [
    ["a plane that leaves nothing", () => cutting(planeCut({ height: -10 })), "nothing-left"],
    ["a bottom plane that leaves nothing", () => cutting(planeCut({ end: "bottom", height: 210 })), "nothing-left"],
    ["two planes that leave nothing between them", () => cutting(planeCut({ id: "a", height: 90 }), planeCut({ id: "b", end: "bottom", height: 110 })), "nothing-left"],
    ["an opening that takes everything", () => cutting(openingCut({ shape: "rectangle", width: 300, length: 500, turn: 0 }, { height: 100, through: "both" })), "nothing-left"],
    ["a profile that leaves nothing", () => shaped({ shape: "nose", radius: 50, centre: 0, height: -1 }), "nothing-left"],
    ["a chain whose lines cross", () => shaped(chain([-60, 100], [20, 100], [20, 140], [-10, 60], [60, 60])), "profile-crosses-itself"],
    ["a chain whose arc crosses a line", () => shaped(chain([-60, 160], [0, 100], { to: { x: 10, z: 100 }, radius: 20, turn: "right", long: true }, [60, 100])), "profile-crosses-itself"],
    ["a chain that ends short of the pipe's side", () => shaped(chain([-60, 100], [40, 120])), "profile-not-across"],
    ["a chain that begins inside the pipe", () => shaped(chain([-40, 100], [60, 120])), "profile-not-across"],
    ["a chain that begins and ends on one side", () => shaped(chain([-60, 100], [0, 120], [-60, 140])), "profile-not-across"],
    ["an arc whose radius is less than half its chord", () => shaped(chain([-60, 100], { to: { x: 60, z: 100 }, radius: 59, turn: "left", long: false })), "arc-too-small"],
    ["an ogee whose radius is less than half an arc's chord", () => shaped({ shape: "ogee", low: 60, high: 160, rising: "right", radius: 30 }), "arc-too-small"],
    ["an arc whose centre is not as far from both ends", () => shaped(chain([-60, 100], { to: { x: 60, z: 100 }, centre: { x: 5, z: 100 }, turn: "left" })), "arc-centre-off"],
  ];
  for (const [name, outcome, code] of refused) {
    it(`${name}: ${code}`, () => expect(outcome()).toMatchObject({ ok: false, problems: [{ code }] }));
  }

  it("a bad profile at the field of its cut", () => {
    const outcome = cutting(planeCut({ id: "a", height: 150 }), shapedCut(chain([-60, 100], [40, 120])));
    expect(outcome.ok ? "" : outcome.problems[0]!.field).toMatch(/^part\.cuts\.1\b/);
  });

  it("random pipes exactly where a profile crosses itself or nothing is left", () => {
    const jobs = Array.from({ length: CASES / 2 }, (_, n) => ({ name: `random pipe ${n}`, job: randomPipe(n) }));
    onEach(jobs, ({ job }) => checkRefusal(job));
  });

  it("random chains exactly where they cross themselves", () => {
    const jobs = Array.from({ length: CASES / 2 }, (_, n) => {
      const source = randomSource(n + 5e5);
      return { name: `random chain ${n}`, job: pipeJob({ diameter: 100, length: 400, cuts: [shapedCut(randomChain(source, source.chance(0.3), 50, 200))] }) };
    });
    onEach(jobs, ({ job }) => checkRefusal(job));
  });
});

describe("develop goes on, and says that", () => {
  const noticed: readonly (readonly [string, () => ReturnType<typeof develop>, string])[] = [
    ["a plane above the stock misses", () => cutting(planeCut({ angle: 30, height: 300 })), "cut-misses"],
    ["a bottom plane below the base misses", () => cutting(planeCut({ angle: 30, height: -100, end: "bottom" })), "cut-misses"],
    ["an opening above the stock misses", () => cutting(openingCut({ shape: "round", diameter: 20 }, { height: 300 })), "cut-misses"],
    ["an opening beside the pipe misses", () => cutting(openingCut({ shape: "round", diameter: 20 }, { height: 100, offset: 70 })), "cut-misses"],
    ["a plane wholly within another's waste misses", () => cutting(planeCut({ id: "a", height: 100 }), planeCut({ id: "b", height: 150 })), "cut-misses"],
    ["a wide opening through both walls leaves separate pieces", () => cutting(openingCut({ shape: "rectangle", width: 120, length: 20, turn: 0 }, { height: 100, through: "both" })), "separate-pieces"],
    ["a plane through the base leaves a wall open at one side", () => cutting(planeCut({ angle: 45, height: 0 })), "open-round"],
  ];
  for (const [name, outcome, code] of noticed) {
    it(`${name}: ${code}`, () => expect(codesOf(outcome())).toContain(code));
    it(`${name}: made all the same`, () => expect(outcome().ok).toBe(true));
  }

  it("nothing about a sound pipe", () => expect(codesOf(cutting(planeCut({ angle: 45, height: 100 })))).toEqual([]));
  it("nothing about a missing cut that is switched off", () => expect(codesOf(cutting(planeCut({ angle: 30, height: 300, on: false })))).toEqual([]));
});
