import { describe, expect, it } from "vitest";
import { type Edge, type Piece, edgePoint } from "../../../src/core/index";
import { criticalTurns, edgeRuns } from "../../../src/drawing/view/edgeRuns";
import type { Sight } from "../../../src/drawing/view/visibility";
import type { Broadside } from "../../../src/drawing/view/views";
import { developedPipe } from "../../support/developed";
import { keptElements } from "../../support/keptElements";
import { randomCases } from "../../support/lawCase";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const NOISE = 1e-4;
const FRONT: Broadside = { kind: "broadside", facing: 0 };
const LEFT: Broadside = { kind: "broadside", facing: (3 * Math.PI) / 2 };

const runsOf = (piece: Piece, view: Broadside, edge: Edge) => edgeRuns(piece, view, edge, criticalTurns(piece, view), NOISE);
const sightsOf = (piece: Piece, view: Broadside) => piece.trimmed.edges.flatMap((edge) => runsOf(piece, view, edge).map(({ sight }) => sight));

/** How much of the turn (radians) the cut edges appear in each way. */
function turnsOf(piece: Piece, view: Broadside): Record<Sight, number> {
  const turns = { visible: 0, hidden: 0, covered: 0 };
  for (const edge of piece.trimmed.edges.filter(({ owner }) => owner.kind === "cut")) {
    for (const { from, to, sight } of runsOf(piece, view, edge)) turns[sight] += (to - from) * Math.abs(edge.to - edge.from);
  }
  return turns;
}

describe("edgeRuns", () => {
  it("finds nothing hidden on a pipe with square ends", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 100 }));
    for (const view of [FRONT, LEFT]) expect(new Set(sightsOf(piece, view))).toEqual(new Set(["visible", "covered"]));
  });

  it("shows the inside of a mouth that opens towards the viewer", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 150, cuts: [planeCut({ angle: 30, direction: 180, height: 100 })] }));
    const turns = turnsOf(piece, FRONT);
    expect(turns.hidden).toBe(0);
    expect(turns.visible).toBeCloseTo(2 * Math.PI, 4);
  });

  it("hides the far half of a mouth that opens away from the viewer", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 150, cuts: [planeCut({ angle: 30, direction: 0, height: 100 })] }));
    const turns = turnsOf(piece, FRONT);
    expect(turns.hidden).toBeCloseTo(Math.PI, 4);
    expect(turns.visible).toBeCloseTo(Math.PI, 4);
  });

  it("covers the far opening of two in line, and sees it through a larger near one", () => {
    const far = (near: number) => developedPipe(pipeJob({ diameter: 100, length: 150, cuts: [
      openingCut({ shape: "round", diameter: near }, { id: "near", height: 75 }),
      openingCut({ shape: "round", diameter: 30 }, { id: "far", direction: 180, height: 75 }),
    ] }));
    const sights = (piece: Piece) => new Set(piece.trimmed.edges
      .filter(({ owner }) => owner.kind === "cut" && owner.id === "far").flatMap((edge) => runsOf(piece, FRONT, edge)).map(({ sight }) => sight));
    expect(sights(far(30))).toEqual(new Set(["covered"]));
    expect(sights(far(50))).toEqual(new Set(["visible"]));
    expect(sights(far(20))).toEqual(new Set(["hidden"]));
  });

  it("leaves no part of any edge of random pipes out and none twice", () => {
    for (const { piece } of randomCases(150)) {
      for (const view of [FRONT, LEFT]) {
        for (const edge of piece.trimmed.edges) {
          let at = 0;
          for (const { from, to } of runsOf(piece, view, edge)) {
            expect(from).toBe(at);
            expect(to).toBeGreaterThanOrEqual(from);
            at = to;
          }
          expect(at).toBe(1);
        }
      }
    }
  });

  it("agrees with a slow look at the near wall at places all along the edges of random pipes", () => {
    let compared = 0;
    for (const { job, piece } of randomCases(150)) {
      const wall = keptElements(job);
      for (const view of [FRONT, LEFT]) {
        for (const edge of piece.trimmed.edges.filter(({ face }) => face !== null)) {
          for (const { from, to, sight } of runsOf(piece, view, edge)) {
            for (const part of [0.13, 0.5, 0.87]) {
              const { theta, z } = edgePoint(piece, edge, from + part * (to - from));
              if (Math.cos(theta - view.facing) > -1e-3) continue;
              const near = wall.at(2 * view.facing + Math.PI - theta);
              const distance = Math.min(...near.flatMap((reach) => [Math.abs(z - reach.from), Math.abs(z - reach.to)]), Infinity);
              if (distance < 1e-3) continue;
              compared++;
              expect(sight).toBe(near.some((reach) => z > reach.from && z < reach.to) ? "hidden" : "visible");
            }
          }
        }
      }
    }
    expect(compared).toBeGreaterThan(500);
  });
});
