import { describe, expect, it } from "vitest";
import { type Development, type Profile, develop } from "../../../src/core/index";
import { type Board, board, redrawn } from "../../../src/drawing/board/board";
import { dragged } from "../../../src/drawing/handles/dragged";
import type { Values } from "../../../src/drawing/handles/grip";
import { type Handle, handles } from "../../../src/drawing/handles/handles";
import { withValues } from "../../../src/drawing/handles/withValues";
import { developed } from "../../support/developed";
import { type Cut, openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";

const window = { width: 320, height: 200 };

interface Scene {
  readonly development: Development;
  readonly board: Board;
  readonly handle: (id: string) => Handle;
  readonly all: readonly Handle[];
}

function scene(cuts: readonly Cut[], pipe: Partial<Parameters<typeof pipeJob>[0]> = {}, hold?: Board): Scene {
  return sceneOf(developed(pipeJob({ diameter: 100, length: 200, cuts, ...pipe })), hold);
}

/** Boards of a bare pipe, whose scale and places all scenes take: it saves fitting each. */
const bare = {
  upright: board(developed(pipeJob({ diameter: 100, length: 200 })), window),
  lying: board(developed(pipeJob({ diameter: 100, length: 200, attitude: "lying" })), window),
};

function sceneOf(development: Development, hold: Board = bare[development.job.part.attitude]): Scene {
  const drawn = redrawn(hold, development, {});
  const all = handles(drawn, development);
  const handle = (id: string) => {
    const found = all.find((one) => one.id === id);
    if (!found) throw new Error(`no handle ${id} among ${all.map((one) => one.id).join(", ")}`);
    return found;
  };
  return { development, board: drawn, handle, all };
}

/** The values for moving a handle by (x, y) mm of its own frame, without snapping. */
function draggedBy(of: Scene, id: string, x: number, y: number, snap = false): Values {
  const handle = of.handle(id);
  const to = handle.sight.onSheet({ x: handle.grip.point.x + x, y: handle.grip.point.y + y });
  return dragged(handle, to, of.development, snap).values;
}

function after(of: Scene, handle: Handle, values: Values): Scene {
  const outcome = develop(withValues(of.development.job, handle.clause, values));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return sceneOf(outcome.development, of.board);
}

const profiles: Readonly<Record<string, Profile>> = {
  hollow: { shape: "hollow", radius: 60, centre: 5, height: 120 },
  nose: { shape: "nose", radius: 70, centre: -4, height: 150 },
  ogee: { shape: "ogee", low: 100, high: 150, rising: "right", radius: 80 },
  "level ogee": { shape: "ogee", low: 100, high: 150, rising: "left", radius: null },
  step: { shape: "step", low: 100, high: 150, rising: "left", position: 10 },
  vee: { shape: "vee", angle: 90, centre: 3, height: 110 },
  free: {
    shape: "free", start: { x: -60, z: 120 },
    legs: [
      { to: { x: -20, z: 120 } },
      { to: { x: 20, z: 140 }, radius: 60, turn: "left", long: false },
      { to: { x: 60, z: 140 }, centre: { x: 40, z: 130 }, turn: "right" },
    ],
  },
};

const kinds: Readonly<Record<string, Cut>> = {
  "plane on the axis": planeCut({ angle: 30, direction: 90, height: 150 }),
  "plane by its high end": planeCut({ angle: 35, direction: 270, height: 200, at: "high" }),
  "plane by its low end": planeCut({ angle: 20, direction: 180, height: 120, at: "low" }),
  "plane of the bottom": planeCut({ end: "bottom", angle: 15, direction: 0, height: 30 }),
  "plane across no view": planeCut({ angle: 25, direction: 50, height: 140 }),
  ...Object.fromEntries(Object.entries(profiles).flatMap(([name, profile]) => [
    [name, shapedCut(profile)],
    [`${name} seen from the left`, shapedCut(profile, { direction: 270 })],
    [`${name} seen from between`, shapedCut(profile, { direction: 35 })],
  ])),
  "hollow of the bottom": shapedCut({ shape: "hollow", radius: 60, centre: 0, height: 40 }, { end: "bottom" }),
  "round opening": openingCut({ shape: "round", diameter: 40 }, { height: 80, offset: 6 }),
  "round opening on no view": openingCut({ shape: "round", diameter: 40 }, { height: 80, direction: 130, offset: 5 }),
  "turned rectangle": openingCut({ shape: "rectangle", width: 30, length: 50, turn: 20 }, { height: 90, direction: 270 }),
  slot: openingCut({ shape: "slot", width: 20, length: 50, turn: -30 }, { height: 90 }),
  "slot at the back": openingCut({ shape: "slot", width: 40, length: 20, turn: 0 }, { height: 90, direction: 180, through: "both" }),
};

describe("handles", () => {
  it("of every kind of cut stay as they are when dragged to where they stand", () => {
    for (const [name, cut] of Object.entries(kinds)) {
      for (const attitude of ["upright", "lying"] as const) {
        const of = scene([cut], { attitude });
        expect(of.all.length, name).toBeGreaterThan(2);
        for (const handle of of.all) {
          for (const snap of [true, false]) expect(dragged(handle, handle.at, of.development, snap).values, `${name}, ${handle.id}`).toEqual({});
        }
      }
    }
  });

  it("stand on the new board where they were dragged, in every kind of cut", () => {
    for (const [name, cut] of Object.entries(kinds)) {
      for (const attitude of ["upright", "lying"] as const) {
        const of = scene([cut], { attitude });
        for (const handle of of.all) {
          const to = roundTripTarget(handle);
          const { values } = dragged(handle, handle.sight.onSheet(to), of.development, false);
          const now = after(of, handle, values).handle(handle.id);
          const wanted = handle.sight.onSheet(handle.grip.kind === "point" ? landed(handle, to) : handle.grip.pointFor(handle.grip.valueAt(to)));
          const off = Math.hypot(now.at.x - wanted.x, now.at.y - wanted.y);
          expect(off, `${name}, ${attitude}, ${handle.id} ${JSON.stringify(values)}`).toBeLessThan(0.03);
        }
      }
    }
  });

  it("names each handle once", () => {
    const { all } = scene(Object.values(kinds).map((cut, i) => ({ ...cut, id: `cut-${i}`, on: i % 7 === 0 })));
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  });

  it("gives none for a cut that is switched off", () => {
    expect(scene([planeCut({ height: 150, on: false })]).all.map(({ id }) => id)).toEqual(["part.length", "part.diameter"]);
  });
});

/** A place a little beside the handle that its feature can run through. */
function roundTripTarget({ grip, id }: Handle): { x: number; y: number } {
  if (grip.kind === "point") return { x: grip.point.x + 1.5, y: grip.point.y - 2 };
  if (id.endsWith(".direction")) return grip.pointFor((((grip.value % 360) + 360) % 360) + 7);
  return grip.pointFor(grip.value * 1.04);
}

/** Where a point handle goes when its fixed coordinates stay; a centre keeps to its line. */
function landed({ grip, id }: Handle, to: { x: number; y: number }): { x: number; y: number } {
  if (grip.kind !== "point") throw new Error("no point");
  if (id.includes(".centre-")) {
    const values = Object.values(grip.put(to)) as number[];
    return { x: values[0] ?? NaN, y: values[1] ?? NaN };
  }
  return { x: grip.across ? to.x : grip.point.x, y: grip.along ? to.y : grip.point.y };
}

describe("dragging by a distance", () => {
  it("moves a plane's height by it, whatever the way the pipe stands", () => {
    for (const attitude of ["upright", "lying"] as const) {
      expect(draggedBy(scene([planeCut({ angle: 30, direction: 90, height: 150 })], { attitude }), "plane.height", 4, -12)).toEqual({ height: 138 });
    }
  });

  it("tilts a plane about the point its height is given for", () => {
    const of = scene([planeCut({ angle: 45, direction: 90, height: 80, at: "low" })]);
    expect(draggedBy(of, "plane.angle", 0, -100)).toEqual({ angle: 0 });
    const high = scene([planeCut({ angle: 45, direction: 90, height: 180, at: "high" })]);
    expect(draggedBy(high, "plane.angle", 0, 50)).toEqual({ angle: 26.57 });
  });

  it("moves the crown of a hollow both ways", () => {
    expect(draggedBy(scene([shapedCut(profiles["hollow"]!)]), "shaped.crown", 3, -7)).toEqual({ "profile.centre": 8, "profile.height": 113 });
  });

  it("draws the arc of a hollow through the point", () => {
    const of = scene([shapedCut({ shape: "hollow", radius: 40, centre: 0, height: 100 })]);
    const handle = of.handle("shaped.radius");
    const to = handle.sight.onSheet({ x: 50, y: 150 });
    expect(dragged(handle, to, of.development, false).values).toEqual({ "profile.radius": 50 });
  });

  it("moves the levels and the riser of a step", () => {
    const of = scene([shapedCut(profiles["step"]!)]);
    expect(draggedBy(of, "shaped.low", 9, 5)).toEqual({ "profile.low": 105 });
    expect(draggedBy(of, "shaped.high", 9, 5)).toEqual({ "profile.high": 155 });
    expect(draggedBy(of, "shaped.position", -4, 5)).toEqual({ "profile.position": 6 });
  });

  it("moves the ends of an ogee", () => {
    const of = scene([shapedCut(profiles["ogee"]!)]);
    expect(draggedBy(of, "shaped.low", 0, -6)).toEqual({ "profile.low": 94 });
    expect(draggedBy(of, "shaped.high", 0, -6)).toEqual({ "profile.high": 144 });
  });

  it("opens a vee to the angle of its flank", () => {
    const of = scene([shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 })]);
    const handle = of.handle("shaped.angle");
    const to = handle.sight.onSheet({ x: 30, y: 100 + 30 * Math.sqrt(3) });
    expect(dragged(handle, to, of.development, false).values).toEqual({ "profile.angle": 60 });
  });

  it("moves a corner of a free profile, and the centre of the arc beside it along", () => {
    const of = scene([shapedCut(profiles["free"]!)]);
    expect(draggedBy(of, "shaped.start", -2, 3)).toEqual({ "profile.start.x": -62, "profile.start.z": 123 });
    expect(draggedBy(of, "shaped.corner-1", 2, 3)).toEqual({ "profile.legs.0.to.x": -18, "profile.legs.0.to.z": 123 });
    const { handle, ...rest } = of;
    const moved = after({ handle, ...rest }, handle("shaped.corner-2"), draggedBy(of, "shaped.corner-2", 2, 4));
    expect(moved.handle("shaped.corner-2").grip.point).toEqual({ x: 22, y: 144 });
  });

  it("turns an arc of a free profile over when it is dragged through its chord", () => {
    const of = scene([shapedCut({ shape: "free", start: { x: -60, z: 100 }, legs: [{ to: { x: 60, z: 100 }, radius: 80, turn: "left", long: false }] })]);
    expect(draggedBy(of, "shaped.radius-1", 0, 60)).toMatchObject({ "profile.legs.0.turn": "right", "profile.legs.0.long": false });
  });

  it("moves an opening that is seen squarely by height and offset, another by height and direction", () => {
    expect(draggedBy(scene([kinds["round opening"]!]), "opening.centre", 4, 10)).toEqual({ offset: 10, height: 90 });
    expect(draggedBy(scene([kinds["round opening on no view"]!]), "opening.centre", 4, 10)).toEqual({ direction: 134, height: 90 });
  });

  it("sizes an opening about its centre", () => {
    const of = scene([openingCut({ shape: "rectangle", width: 30, length: 50, turn: 0 }, { height: 90 })]);
    expect(draggedBy(of, "opening.width", 3, 8)).toEqual({ "outline.width": 36 });
    expect(draggedBy(of, "opening.length", 3, 8)).toEqual({ "outline.length": 66 });
    const round = scene([openingCut({ shape: "round", diameter: 40 }, { height: 90 })]);
    expect(draggedBy(round, "opening.diameter", Math.SQRT1_2, Math.SQRT1_2)).toEqual({ "outline.diameter": 42 });
  });

  it("moves the end and the wall of the pipe", () => {
    const of = scene([], { basis: "outside", thickness: 2 });
    expect(draggedBy(of, "part.length", 5, 20)).toEqual({ length: 220 });
    expect(draggedBy(of, "part.diameter", 5, 20)).toEqual({ diameter: 110 });
  });
});

describe("snapping", () => {
  it("takes round numbers that a hand can tell apart at the scale", () => {
    const { height } = draggedBy(scene([planeCut({ angle: 30, direction: 90, height: 150 })]), "plane.height", 0, -12.3456, true);
    expect(Number(height) % 0.5).toBe(0);
    expect(Math.abs(Number(height) - 137.6544)).toBeLessThan(0.5);
  });

  it("takes sixteenths and the like in a job in inches", () => {
    const job = { ...pipeJob({ diameter: 101.6, length: 203.2, cuts: [planeCut({ height: 152.4 })] }), units: "inch" as const };
    const { height } = draggedBy(sceneOf(developed(job)), "plane.height", 0, -12.3, true);
    expect(((Number(height) / 25.4) * 32) % 1).toBeCloseTo(0, 9);
  });

  it("takes the height of another cut, and says so", () => {
    const of = scene([planeCut({ angle: 30, direction: 90, height: 150.3 }), openingCut({ shape: "round", diameter: 30 }, { height: 61.37 })]);
    const handle = of.handle("opening.centre");
    const to = handle.sight.onSheet({ x: 12, y: 150.5 });
    expect(dragged(handle, to, of.development, true)).toMatchObject({ values: { height: 150.3 }, fits: [{ why: "level", clause: "cut:plane" }] });
  });

  it("brings an opening onto the axis and against the contour", () => {
    const of = scene([openingCut({ shape: "round", diameter: 30 }, { height: 90, offset: 20 })]);
    expect(draggedBy(of, "opening.centre", -19.7, 0, true)).toMatchObject({ offset: 0 });
    expect(draggedBy(of, "opening.centre", 14.8, 0, true)).toMatchObject({ offset: 35 });
  });

  it("takes the pipe's own radius for a hollow", () => {
    const of = scene([shapedCut({ shape: "hollow", radius: 44, centre: 0, height: 100 })], { diameter: 101.3 });
    const handle = of.handle("shaped.radius");
    if (handle.grip.kind !== "size") throw new Error("no size");
    const to = handle.sight.onSheet(handle.grip.pointFor(50.9));
    expect(dragged(handle, to, of.development, true)).toMatchObject({ values: { "profile.radius": 50.65 }, fits: [{ why: "own-radius" }] });
  });

  it("levels the ends of an ogee", () => {
    const of = scene([shapedCut(profiles["ogee"]!)]);
    const handle = of.handle("shaped.radius");
    if (handle.grip.kind !== "size") throw new Error("no size");
    const level = (100 * 100 + 50 * 50) / (4 * 50);
    expect(dragged(handle, handle.sight.onSheet(handle.grip.pointFor(level * 1.01)), of.development, true).values).toEqual({ "profile.radius": null });
  });

  it("makes an arc tangent to the leg before it and to the leg after it", () => {
    const of = scene([shapedCut({
      shape: "free", start: { x: -60, z: 100 },
      legs: [{ to: { x: -20, z: 100 } }, { to: { x: 20, z: 120 }, radius: 90, turn: "left", long: false }, { to: { x: 60, z: 160 } }],
    })]);
    const handle = of.handle("shaped.radius-2");
    if (handle.grip.kind !== "size") throw new Error("no size");
    // Tangent to the level leg: half the chord over the sine of its slope.
    const chord = Math.hypot(40, 20);
    const tangent = chord / 2 / (20 / chord);
    const found = dragged(handle, handle.sight.onSheet(handle.grip.pointFor(tangent + 0.4)), of.development, true);
    expect(found.fits).toMatchObject([{ why: "tangent" }]);
    expect(found.values["profile.legs.1.radius"]).toBeCloseTo(tangent, 9);
    expect(found.values["profile.legs.1.turn"]).toBe("left");
    const next = chord / 2 / Math.sin(Math.PI / 4 - Math.atan2(20, 40));
    const other = dragged(handle, handle.sight.onSheet(handle.grip.pointFor(next + 1)), of.development, true);
    expect(other.values["profile.legs.1.radius"]).toBeCloseTo(next, 9);
  });

  it("takes right angles on the circle", () => {
    const of = scene([planeCut({ angle: 30, direction: 80, height: 150 })]);
    const handle = of.handle("plane.direction");
    if (handle.grip.kind !== "size") throw new Error("no size");
    expect(dragged(handle, handle.grip.pointFor(89), of.development, true)).toMatchObject({ values: { direction: 90 }, fits: [{ why: "side" }] });
  });
});

describe("a board that is held", () => {
  it("keeps its scale and the places of its views while the pipe grows", () => {
    const of = scene([]);
    const grown = after(of, of.handle("part.length"), { length: 260 });
    expect(grown.board.scale).toBe(of.board.scale);
    expect(grown.board.blocks.pattern.place).toEqual(of.board.blocks.pattern.place);
    expect(grown.handle("part.length").at.y - of.handle("part.length").at.y).toBeCloseTo(60 * of.board.scale, 9);
  });
});
