import { describe, expect, it } from "vitest";
import { type Piece, type Vec2, edgePoint } from "../../../src/core/index";
import { boundsOf } from "../../../src/drawing/bounds";
import type { Item, PathItem } from "../../../src/drawing/display";
import { type PictorialOptions, pictorial } from "../../../src/drawing/pictorial/pictorial";
import { pictorialSheet } from "../../../src/drawing/pictorial/pictorialSheet";
import { type Sight, isometric } from "../../../src/drawing/pictorial/pictorialSight";
import { pictorialStationAt } from "../../../src/drawing/pictorial/pictorialStationAt";
import { sideways, viewsOf } from "../../../src/drawing/view/views";
import { isClose, expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, type Seam } from "../../support/pipeJob";

const WINDOW = { width: 120, height: 90 };
const FROM_FRONT: Sight = { turn: 0, tilt: 0 };
const fractions = [0, 1e-9, 0.2, 0.5, 0.8, 0.99, 1];
const seams: readonly Seam[] = [{ at: "front" }, { at: "right" }, { at: "back" }, { at: "left" }, { at: "angle", angle: 37 }];

function vent(change: Partial<Parameters<typeof pipeJob>[0]> = {}): Piece {
  const cuts = [planeCut({ angle: 35, direction: 180, height: 170 }), openingCut({ shape: "round", diameter: 40 }, { direction: 270, height: 70 })];
  return developedPipe(pipeJob({ diameter: 90, length: 220, cuts, stations: 16, face: "inside", ...change }));
}

const view = (piece: Piece, options: Partial<PictorialOptions> = {}) => {
  const sheet = pictorialSheet(piece, "first");
  return pictorial(sheet, { ...WINDOW, fraction: 1, sight: isometric("first"), ...options });
};

const paths = (items: readonly Item[], pen: string) => items.filter((item): item is PathItem => item.kind === "path" && item.pen === pen);
const middleOf = (item: PathItem | undefined): Vec2 => {
  const { from, to } = item!.segments[0]!;
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
};

describe("pictorial", () => {
  it("of one stage alone fills its window, whatever the others would take", () => {
    for (const fraction of [0, 0.4, 1]) for (const sight of [isometric("first"), FROM_FRONT]) {
      const { left, right, bottom, top } = boundsOf(view(vent(), { fraction, sight, alone: true }).items);
      expectClose(Math.max((right - left) / (WINDOW.width - 2), (top - bottom) / (WINDOW.height - 2)), 1, 0.01);
    }
  });

  it("shows the finished pipe from the front as the front view does, wherever the seam and whichever face is up", () => {
    for (const seam of seams) for (const face of ["inside", "outside"] as const) {
      const piece = vent({ seam, face });
      const { walls, scale } = view(piece, { sight: FROM_FRONT });
      const front = viewsOf("upright", "first").front;
      if (front.kind !== "broadside") throw new Error("the front view of an upright pipe is broadside");
      for (const { feet } of walls) {
        for (const { station, foot } of feet) {
          expectClose((foot.x - WINDOW.width / 2) / scale, sideways(front, 45, piece.stations[station]!.theta), 0.01, `station ${station}`);
        }
      }
      const near = walls.filter(({ side }) => side === "outside").flatMap(({ feet }) => feet).map(({ station }) => Math.cos(piece.stations[station]!.theta));
      expect(Math.min(...near)).toBeGreaterThan(-1e-9);
    }
  });

  it("shows a lying pipe from the front with its height running to the right", () => {
    const { axis, scale } = view(vent({ attitude: "lying" }), { sight: FROM_FRONT });
    expectClose(axis.x, scale, 1e-12, "x");
    expectClose(axis.y, 0, 1e-12, "y");
  });

  it("shows the flat sheet from the front as the pattern, face up", () => {
    for (const face of ["inside", "outside"] as const) {
      const piece = vent({ face });
      const { walls, items, scale } = view(piece, { fraction: 0, sight: FROM_FRONT });
      expect(items.find((item) => item.kind === "surface")).toMatchObject({ side: face });
      const feet = walls.flatMap((wall) => wall.feet);
      const origin = feet[0]!.foot.x;
      for (const { station, foot } of feet) expectClose((foot.x - origin) / scale, piece.stations[station]!.girth, 1e-9, `station ${station}`);
    }
  });

  it("keeps inside its window at every stage, however it is turned", () => {
    for (const fraction of fractions) {
      for (let turn = -3; turn <= 3; turn += 0.9) {
        for (const tilt of [-Math.PI / 2, -0.6, 0, 0.4, Math.PI / 2]) {
          const { left, right, bottom, top } = boundsOf(view(vent(), { fraction, sight: { turn, tilt } }).items);
          expect(Math.min(left, bottom, WINDOW.width - right, WINDOW.height - top)).toBeGreaterThan(0.5);
        }
      }
    }
  });

  it("keeps its scale while the sheet rolls up in the isometric view", () => {
    for (const seam of seams) {
      const scales = fractions.map((fraction) => view(vent({ seam }), { fraction }).scale);
      expectClose(Math.min(...scales), Math.max(...scales), 0.01 * Math.max(...scales), "scale");
    }
  });

  it("foreshortens the three axes equally in the isometric view", () => {
    const { axis, scale } = view(vent());
    expectClose(Math.hypot(axis.x, axis.y) / scale, Math.sqrt(2 / 3), 1e-12, "height");
    const circle = view(vent({ cuts: [] }));
    const contours = paths(circle.items, "contour");
    expectClose(Math.abs(middleOf(contours[0]).x - middleOf(contours[1]).x) / circle.scale, 90, 1e-9, "width between the contours");
  });

  it("draws the edges within 0.05 mm of the true ones", () => {
    const piece = vent({ seam: { at: "front" }, face: "outside" });
    const { items, scale } = view(piece, { sight: FROM_FRONT, width: 400, height: 400 });
    const lines = paths(items, "visible edge").flatMap(({ segments }) => segments);
    const foot = boundsOf(items).bottom;
    const near = piece.trimmed.edges.filter((edge) => edge.owner.kind === "cut");
    for (const edge of near) {
      for (let u = 0.005; u < 1; u += 0.01) {
        const { theta, z } = edgePoint(piece, edge, u);
        if (Math.cos(theta) < 0.01) continue;
        const x = 200 + scale * 45 * Math.sin(theta), y = foot + scale * z;
        expect(Math.min(...lines.map(({ from, to }) => offLine({ x, y }, from, to)))).toBeLessThan(0.05);
      }
    }
  });

  it("draws the far wall, then the near one over it", () => {
    const { items } = view(vent());
    const kinds = items.map((item) => (item.kind === "surface" ? item.side : item.kind === "path" ? item.pen : item.kind));
    const far = kinds.indexOf("inside"), near = kinds.indexOf("outside");
    expect(far).toBe(0);
    expect(near).toBeGreaterThan(kinds.indexOf("visible edge"));
    expect(near).toBeLessThan(kinds.lastIndexOf("visible edge"));
    expect(kinds.lastIndexOf("outside")).toBeLessThan(kinds.indexOf("contour"));
  });

  it("draws the seam wide while it is open, narrow when it is closed", () => {
    expect(paths(view(vent(), { fraction: 0.99 }).items, "seam")).toEqual([]);
    expect(paths(view(vent()).items, "seam").length).toBeGreaterThan(0);
  });

  it("leaves every other element out when they would crowd", () => {
    const many = view(vent({ stations: 360 }), { width: 40, height: 40 });
    const spaced = paths(many.items, "station").length;
    expect(spaced).toBeGreaterThan(10);
    expect(spaced).toBeLessThan(120);
  });

  it("refuses a window without room, and a fraction outside [0, 1]", () => {
    expect(() => view(vent(), { width: 1 })).toThrow(RangeError);
    expect(() => view(vent(), { fraction: 1.5 })).toThrow(RangeError);
  });
});

describe("the station in hand", () => {
  const piece = vent({ seam: { at: "front" } });

  it("is drawn wide on the near wall, and dashed through it on the far one", () => {
    const near = piece.stations.findIndex(({ theta }) => isClose(theta, 0, 1e-9));
    const far = piece.stations.findIndex(({ theta }) => isClose(theta, Math.PI, 1e-9));
    const pens = (station: number) => view(piece, { sight: { turn: 0, tilt: 0.3 }, station }).items.flatMap((item) => (item.kind === "path" && item.pen.includes("hand") ? [item.pen] : []));
    expect(pens(near)).toEqual(["station in hand"]);
    expect(pens(far)).toEqual(["station in hand", "hidden station in hand"]);
  });
});

describe("pictorialStationAt", () => {
  const piece = vent();

  it("finds the station at the middle of each element drawn on the near wall", () => {
    // Not quite isometric: no element falls on the contour.
    const shown = view(piece, { sight: { turn: -0.7, tilt: 0.6 } });
    const near = new Set(shown.walls.filter(({ side }) => side === "outside").flatMap(({ feet }) => feet.map(({ station }) => station)));
    const elements = paths(shown.items, "station").filter(({ ref }) => near.has(ref!.station!));
    expect(elements.length).toBeGreaterThan(5);
    for (const element of elements) expect(pictorialStationAt(shown, middleOf(element))).toBe(element.ref!.station);
  });

  it("reaches the far wall through an opening", () => {
    const shown = view(piece, { sight: { turn: -Math.PI / 2, tilt: 0 } });
    const foot = boundsOf(shown.items).bottom;
    const seen = pictorialStationAt(shown, { x: WINDOW.width / 2 + 0.1, y: foot + 70 * shown.scale });
    expect(Math.sin(piece.stations[seen!]!.theta)).toBeGreaterThan(0.9);
    const wall = pictorialStationAt(shown, { x: WINDOW.width / 2 + 0.1, y: foot + 20 * shown.scale });
    expect(Math.sin(piece.stations[wall!]!.theta)).toBeLessThan(-0.9);
  });

  it("finds none beside the piece", () => {
    expect(pictorialStationAt(view(piece), { x: 1, y: 1 })).toBeNull();
  });
});

function offLine(point: Vec2, a: Vec2, b: Vec2): number {
  const dx = b.x - a.x, dy = b.y - a.y;
  const u = Math.max(0, Math.min(1, ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(point.x - a.x - u * dx, point.y - a.y - u * dy);
}
