import { describe, expect, it } from "vitest";
import { flattenSegments, pathLength } from "../../../src/core/index";
import { type ViewLine, viewGeometry } from "../../../src/drawing/view/viewGeometry";
import { viewsOf } from "../../../src/drawing/view/views";
import { developedPipe } from "../../support/developed";
import { isClose } from "../../support/approximate";
import { randomCases } from "../../support/lawCase";
import { mirroredJob } from "../../support/mirroredJob";
import { pipeJob, planeCut, shapedCut } from "../../support/pipeJob";

const VIEWS = viewsOf("upright", "first");

const lengthOf = (lines: readonly ViewLine[], pen: string) =>
  lines.filter((line) => line.pen === pen).reduce((sum, { segments }) => sum + pathLength(segments), 0);
const points = (lines: readonly ViewLine[]) => lines.filter(({ pen }) => pen !== "stretch-out" && pen !== "seam").flatMap(({ segments }) => flattenSegments(segments, 0.01));

describe("viewGeometry", () => {
  it("draws a pipe with square ends as two contours and two straight edges, seen square to its axis", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 100, seam: { at: "back" } }));
    const lines = viewGeometry(piece, VIEWS.front);
    expect(lines.filter(({ pen }) => pen === "hidden edge")).toEqual([]);
    expect(lengthOf(lines, "contour")).toBeCloseTo(200, 9);
    expect(lengthOf(lines, "visible edge")).toBeCloseTo(120, 9);
    expect(lines.filter(({ pen }) => pen === "visible edge").every(({ segments }) => segments.every(({ kind }) => kind === "line"))).toBe(true);
  });

  it("draws a pipe with square ends as one circle, seen along its axis", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 100 }));
    const [circle, ...rest] = viewGeometry(piece, VIEWS.top);
    expect(rest).toEqual([]);
    expect(circle?.segments.map(({ kind }) => kind)).toEqual(["arc"]);
    expect(lengthOf(circle ? [circle] : [], "visible edge")).toBeCloseTo(60 * Math.PI, 9);
  });

  it("keeps the arcs of a shaped end as arcs in the view that sees its profile", () => {
    const cut = shapedCut({ shape: "hollow", radius: 70, centre: 0, height: 80 });
    const piece = developedPipe(pipeJob({ diameter: 100, length: 150, cuts: [cut] }));
    const edges = viewGeometry(piece, VIEWS.front).filter(({ ref }) => ref.clause === "cut:shaped");
    const arcs = edges.flatMap(({ segments }) => segments);
    expect(arcs.length).toBeGreaterThan(0);
    for (const arc of arcs) {
      expect(arc.kind).toBe("arc");
      if (arc.kind === "arc") expect(Math.hypot(arc.from.x - arc.centre.x, arc.from.y - arc.centre.y)).toBeCloseTo(70, 6);
    }
  });

  it("draws a sloping plane seen edge on as one straight line", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 150, cuts: [planeCut({ angle: 30, direction: 90, height: 100 })] }));
    const [line, ...rest] = viewGeometry(piece, VIEWS.front).filter(({ ref }) => ref.clause === "cut:plane");
    expect(rest).toEqual([]);
    expect(line?.segments.map(({ kind }) => kind)).toEqual(["line"]);
  });

  it("shows a circle thin where the pipe is cut away altogether", () => {
    const piece = developedPipe(pipeJob({ diameter: 60, length: 100, cuts: [planeCut({ angle: 75, direction: 0, height: 0 })] }));
    const lines = viewGeometry(piece, VIEWS.top);
    expect(lengthOf(lines, "visible edge")).toBeCloseTo(30 * Math.PI, 6);
    expect(lengthOf(lines, "projection")).toBeCloseTo(30 * Math.PI, 6);
  });

  it("gives the same heights to front view, side view and pattern of random pipes", () => {
    for (const { piece, name } of randomCases(120)) {
      const [low, high] = piece.pattern.height;
      for (const view of [VIEWS.front, VIEWS.side]) {
        const ys = points(viewGeometry(piece, view)).map(({ y }) => y);
        const slack = 0.03 + 0.01;
        expect(isClose(Math.min(...ys), low, slack) && isClose(Math.max(...ys), high, slack), `${name}: ${Math.min(...ys)} to ${Math.max(...ys)}, pattern ${low} to ${high}`).toBe(true);
      }
    }
  });

  it("gives the mirrored front view for the mirrored job", () => {
    for (const { job, piece, name } of randomCases(80)) {
      const other = viewGeometry(developedPipe(mirroredJob(job)), VIEWS.front);
      const lines = viewGeometry(piece, VIEWS.front);
      for (const pen of ["visible edge", "hidden edge", "contour"]) {
        expect(isClose(lengthOf(other, pen), lengthOf(lines, pen), 0.05 + 1e-4 * lengthOf(lines, pen)), `${name}, ${pen}`).toBe(true);
      }
      const xs = points(lines).map(({ x }) => -x), mirrored = points(other).map(({ x }) => x);
      expect(Math.max(...mirrored)).toBeCloseTo(Math.max(...xs), 1);
    }
  });

  it("reaches the sides of the circle and no farther", () => {
    for (const { piece } of randomCases(60)) {
      const { radius } = piece.form;
      for (const { x } of points(viewGeometry(piece, VIEWS.side))) expect(Math.abs(x)).toBeLessThan(radius + 0.006);
    }
  });
});

describe("viewGeometry of a thick pipe, wherever its cuts are placed", () => {
  const slant = planeCut({ angle: 35, direction: 90, height: 110 });
  const hollow = shapedCut({ shape: "hollow", radius: 60, centre: 5, height: 120 });
  const walls = [{ surface: "mean" }, { surface: "outside" }, { surface: "inside" }, { surface: "clear" }, { purpose: "wrap", paper: 0.4 }, { surface: "mean", kFactor: 0.3 }] as const;
  const made = (cut: typeof slant | typeof hollow, fabrication: (typeof walls)[number]) =>
    developedPipe(pipeJob({ diameter: 100, basis: "outside", thickness: 4, length: 200, stations: 24, cuts: [cut], fabrication }));

  /** Heights at which the lines of the cut stand at a place across the front view. */
  const heightsAt = (lines: readonly ViewLine[], x: number) =>
    lines.flatMap(({ segments }) => flattenSegments(segments, 1e-4)).flatMap((b, i, all) => {
      const a = all[i - 1];
      if (!a || x < Math.min(a.x, b.x) - 1e-9 || x > Math.max(a.x, b.x) + 1e-9 || a.x === b.x) return [];
      return [a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y)];
    });

  for (const wall of walls) {
    const name = Object.values(wall).join(" ");

    it(`reads at every station the ordinate of the pattern: ${name}`, () => {
      for (const cut of [slant, hollow]) {
        const piece = made(cut, wall);
        const lines = viewGeometry(piece, VIEWS.front).filter(({ ref }) => ref.clause === `cut:${cut.id}`);
        for (const { theta, top } of piece.stations) {
          const heights = heightsAt(lines, piece.form.cutRadius * Math.sin(theta));
          expect(Math.min(...heights.map((height) => Math.abs(height - (top ?? NaN)))), `${cut.id} at ${theta}`).toBeLessThan(0.006);
        }
      }
    });

    // The plane's own equation: z = height + x tan(angle), x across on the surface where the cut is placed.
    it(`draws a slanting end at its own angle: ${name}`, () => {
      const lines = viewGeometry(made(slant, wall), VIEWS.front).filter(({ ref }) => ref.clause === "cut:plane");
      const ends = lines.flatMap(({ segments }) => segments.flatMap(({ from, to }) => [from, to]));
      expect(ends.length).toBeGreaterThan(0);
      const off = ends.map(({ x, y }) => Math.abs(y - (110 + x * Math.tan((35 * Math.PI) / 180))));
      // What clears both faces of the wall follows the inner one below the middle, 4 mm further in.
      expect(Math.max(...off)).toBeLessThan("surface" in wall && wall.surface === "clear" ? 4 * Math.tan((35 * Math.PI) / 180) + 1e-6 : 1e-6);
    });
  }
});
