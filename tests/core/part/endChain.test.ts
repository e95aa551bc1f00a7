import { describe, expect, it } from "vitest";
import { endChain } from "../../../src/core/part/endChain";
import type { ChainSegment } from "../../../src/core/geometry/chain";
import { arcSweep } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";
import type { Profile } from "../../support/pipeJob";

/** Of 50 mm radius, without a wall. */
const PIPE = { cutRadius: 50, outside: 100 };
const { PI } = Math;

function chainOf(profile: Profile, end: "top" | "bottom" = "top"): ChainSegment[] {
  const built = endChain(profile, end, PIPE, "profile");
  if (!built.ok) throw new Error(built.problem.code);
  return built.chain;
}

function problemOf(profile: Profile): string {
  const built = endChain(profile, "top", PIPE, "profile");
  return built.ok ? "none" : `${built.problem.code} at ${built.problem.field}`;
}

/** Direction (radians) of a segment at its start or end. */
function directionAt(segment: ChainSegment, at: "from" | "to"): number {
  if (segment.kind === "line") return Math.atan2(segment.to.y - segment.from.y, segment.to.x - segment.from.x);
  const { centre, anticlockwise } = segment;
  return Math.atan2(segment[at].y - centre.y, segment[at].x - centre.x) + (anticlockwise ? PI / 2 : -PI / 2);
}

const bump: Profile = { shape: "free", start: { x: -60, z: 100 }, legs: [{ to: { x: 0, z: 130 } }, { to: { x: 60, z: 100 }, radius: 80, turn: "right", long: false }] };
const shapes: readonly Profile[] = [
  { shape: "hollow", radius: 55, centre: 3, height: 100 }, { shape: "nose", radius: 30, centre: -3, height: 100 },
  { shape: "vee", angle: 70, centre: 10, height: 100 }, { shape: "step", low: 80, high: 120, rising: "left", position: -90 },
  { shape: "ogee", low: 80, high: 120, rising: "left", radius: null }, bump,
];

describe("endChain", () => {
  for (const profile of shapes) {
    it(`of a ${profile.shape} runs from left to right without a gap`, () => {
      const chain = chainOf(profile);
      expect(chain[0]!.from.x).toBeLessThan(chain.at(-1)!.to.x);
      for (let i = 1; i < chain.length; i++) expect(chain[i]!.from).toEqual(chain[i - 1]!.to);
    });
  }
  for (const profile of shapes.slice(0, 3)) {
    it(`of a ${profile.shape} on the bottom end stands on its head about its own height`, () => {
      chainOf(profile, "bottom").forEach(({ from }, i) => expectClose(from.y, 200 - chainOf(profile)[i]!.from.y, 1e-9));
    });
  }
  for (const profile of shapes.slice(3)) {
    it(`of a ${profile.shape} is the same on the bottom end`, () => expect(chainOf(profile, "bottom")).toEqual(chainOf(profile)));
  }
  it("of a vee opens with its angle", () => {
    const [left, right] = chainOf({ shape: "vee", angle: 70, centre: 10, height: 100 });
    expectClose(directionAt(right!, "from") - directionAt(left!, "to"), PI - (70 * PI) / 180, 1e-12);
  });
  it("of an ogee level at its ends is level there and smooth in the middle", () => {
    for (const rising of ["left", "right"] as const) {
      const [one, two] = chainOf({ shape: "ogee", low: 80, high: 120, rising, radius: null });
      for (const direction of [directionAt(one!, "from"), directionAt(two!, "to")]) expectClose(Math.sin(direction), 0, 1e-12);
      expectClose(Math.sin(directionAt(one!, "to") - directionAt(two!, "from")), 0, 1e-12);
    }
  });
  it("of an ogee with its own radius is smooth in the middle", () => {
    const [one, two] = chainOf({ shape: "ogee", low: 60, high: 160, rising: "right", radius: 50 });
    expectClose(Math.sin(directionAt(one!, "to") - directionAt(two!, "from")), 0, 1e-12);
  });
  it("of an ogee is hollow at its low end", () => {
    for (const [rising, index] of [["right", 0], ["left", 1]] as const) {
      const arc = chainOf({ shape: "ogee", low: 60, high: 160, rising, radius: 50 })[index]!;
      expect(arc.kind === "arc" && arcSweep(arc).sweep > 0).toBe(true);
    }
  });
  it("of a free chain given from right to left is turned round", () => {
    const back: Profile = { shape: "free", start: { x: 60, z: 100 }, legs: [{ to: { x: 0, z: 130 }, radius: 80, turn: "left", long: false }, { to: { x: -60, z: 100 } }] };
    expect(chainOf(back).map(({ from, to }) => [from, to])).toEqual(chainOf(bump).map(({ from, to }) => [from, to]));
  });
  it("of an arc leg by its centre is that arc", () => {
    const [arc] = chainOf({ shape: "free", start: { x: -50, z: 100 }, legs: [{ to: { x: 50, z: 100 }, centre: { x: 0, z: 100 }, turn: "right" }] });
    expect(arc).toEqual({ kind: "arc", from: { x: -50, y: 100 }, to: { x: 50, y: 100 }, centre: { x: 0, y: 100 }, anticlockwise: false });
  });
  it("refuses an ogee whose arcs are too small", () => expect(problemOf({ shape: "ogee", low: 60, high: 160, rising: "right", radius: 30 })).toBe("arc-too-small at profile.radius"));
  it("refuses a free arc too small for its ends", () => {
    expect(problemOf({ shape: "free", start: { x: -50, z: 0 }, legs: [{ to: { x: 50, z: 0 }, radius: 49, turn: "left", long: false }] })).toBe("arc-too-small at profile.legs.0.radius");
  });
  it("refuses a free arc whose centre is not as far from both ends", () => {
    expect(problemOf({ shape: "free", start: { x: -50, z: 0 }, legs: [{ to: { x: 50, z: 0 }, centre: { x: 1, z: 0 }, turn: "left" }] })).toBe("arc-centre-off at profile.legs.0.centre");
  });
  it("refuses a leg without length", () => {
    expect(problemOf({ shape: "free", start: { x: -50, z: 0 }, legs: [{ to: { x: 50, z: 0 } }, { to: { x: 50, z: 0 } }] })).toBe("profile-too-short at profile.legs.1");
  });
  it("refuses a free chain that does not reach across the pipe", () => {
    expect(problemOf({ shape: "free", start: { x: -49, z: 0 }, legs: [{ to: { x: 50, z: 0 } }] })).toBe("profile-not-across at profile");
  });
});
