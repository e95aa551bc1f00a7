import { describe, expect, it } from "vitest";
import { type Edge, directionAlong, edgePoint, edgeTangent, isLevel, tangentAlong } from "../../../src/core/trim/edge";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";
import { randomPipe } from "../../support/randomPipe";
import { develop, type Piece } from "../../../src/core/index";

/** The edges of the first random pipes that can be made, and of a slanting pipe with a wall. */
const pieces: readonly Piece[] = Array.from({ length: 40 }, (_, n) => develop(randomPipe(n))).flatMap((outcome) => (outcome.ok ? outcome.development.pieces : []));

function onEdges(claim: (piece: Piece, edge: Edge) => void): void {
  for (const piece of pieces) for (const edge of piece.trimmed.edges) claim(piece, edge);
}

describe("edgePoint", () => {
  it("at 0 and 1 is at the ends the edge states", () => onEdges(({ cutters }, edge) => {
    expect([edgePoint(cutters, edge, 0), edgePoint(cutters, edge, 1)]).toEqual([{ theta: edge.from, z: edge.z[0] }, { theta: edge.to, z: edge.z[1] }]);
  }));
  it("comes to its ends without a jump", () => onEdges(({ cutters, form }, edge) => {
    const size = Math.max(form.length, form.outside);
    const steep = Math.max(...[1e-9, 1 - 1e-9].map((u) => Math.abs(edgePoint(cutters, edge, u).z - edgePoint(cutters, edge, Math.round(u)).z)));
    expect(steep).toBeLessThan(1e-5 * size);
  }));
});

describe("edgeTangent", () => {
  it("has length 1", () => onEdges(({ cutters, form }, edge) => {
    const { x, y } = edgeTangent(form, cutters, edge, 0.37);
    expectClose(Math.hypot(x, y), 1, 1e-12);
  }));
  it("points where the points go", () => onEdges(({ cutters, form }, edge) => {
    if (Math.hypot(form.radius * (edge.to - edge.from), edge.z[1] - edge.z[0]) < 0.5) return;
    for (const u of [0.2, 0.5, 0.8]) {
      const [a, b] = [edgePoint(cutters, edge, u - 1e-5), edgePoint(cutters, edge, u + 1e-5)];
      const [dx, dy] = [form.radius * (b.theta - a.theta), b.z - a.z];
      const { x, y } = edgeTangent(form, cutters, edge, u);
      expectClose((x * dy - y * dx) / Math.hypot(dx, dy), 0, 1e-3);
      expect(x * dx + y * dy).toBeGreaterThan(0);
    }
  }));
  it("along an element is upright", () => {
    const { form, cutters, trimmed } = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 25 })] }));
    const upright = trimmed.edges.filter(({ face, owner }) => !face && owner.kind === "cut");
    expect(upright.map((edge) => Math.abs(edgeTangent(form, cutters, edge, 0.5).y))).toEqual([1, 1]);
  });
});

describe("tangentAlong", () => {
  const { form, cutters } = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ angle: 45, height: 120 })] }));
  it("of a 45° mitre a quarter turn from its crown falls at 45°", () => {
    const { x, y } = tangentAlong(form, cutters, { cutter: 2, face: 0 }, Math.PI / 2, 1);
    expectClose(x, Math.SQRT1_2, 1e-14);
    expectClose(y, -Math.SQRT1_2, 1e-14);
  });
  it("directionAlong of a cut found on a larger surface is steeper by the ratio of the radii", () => {
    const larger = cutters.map((cutter) => ({ ...cutter, radius: 55 }));
    const { ds, dz } = directionAlong(form, larger, { cutter: 2, face: 0 }, Math.PI / 2, 1);
    expectClose(dz / ds, -1.1, 1e-13);
  });
});

describe("isLevel", () => {
  const { cutters, trimmed } = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ angle: 45, height: 120 }), openingCut({ shape: "rectangle", width: 30, length: 20, turn: 0 }, { height: 30, direction: 90 })] }));
  it("holds for a square end", () => {
    expect(trimmed.edges.filter(({ owner }) => owner.kind === "bottom").every((edge) => isLevel(cutters, edge))).toBe(true);
  });
  it("holds for two sides of a rectangle, not for its upright ones", () => {
    expect(trimmed.edges.filter(({ owner }) => owner.kind === "cut" && owner.index === 1).map((edge) => isLevel(cutters, edge)).sort()).toEqual([false, false, true, true]);
  });
  it("does not hold for a mitre", () => {
    expect(trimmed.edges.filter(({ owner }) => owner.kind === "cut" && owner.index === 0).some((edge) => isLevel(cutters, edge))).toBe(false);
  });
});
