import fc from "fast-check";
import type { ExerciseChoices } from "../../../src/core/job/exerciseChoices";
import type { EdgeFinish, FabricationChoices, SeamJoint } from "../../../src/core/job/fabricationChoices";
import type { Cut, Job, Leg, Outline, PipePart, Point, Profile, Seam } from "../../../src/core/job/job";
import type { Marking, ReadingSheet } from "../../../src/core/job/marking";
import { CHOICES, LIMITS, type Limit } from "../../../src/core/job/limits";

// Any job that keeps its limits, whether it can be made or not; every field takes every kind of value it may.

const within = ({ min, max }: Pick<Limit, "min" | "max">) =>
  fc.double({ min, max, noNaN: true }).map((value) => (value === 0 ? 0 : value));

const oneOf = <const T>({ of }: { of: readonly T[] }) => fc.constantFrom(...of);

const height = within(LIMITS.height);
const sideways = within(LIMITS.sideways);
const direction = within(LIMITS.direction);
const radius = within(LIMITS.radius);
const side = oneOf(CHOICES.side);
const levels = fc
  .tuple(height, height)
  .filter(([a, b]) => a !== b)
  .map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));

const point: fc.Arbitrary<Point> = fc.record({ x: sideways, z: height });

const leg: fc.Arbitrary<Leg> = fc.oneof(
  fc.record({ to: point }),
  fc.record({ to: point, radius, turn: side, long: fc.boolean() }),
  fc.record({ to: point, centre: point, turn: side }),
);

const profile: fc.Arbitrary<Profile> = fc.oneof(
  fc.record({ shape: fc.constantFrom("hollow", "nose"), radius, centre: sideways, height }),
  fc
    .tuple(levels, side, fc.option(radius))
    .map(([level, rising, arc]): Profile => ({ shape: "ogee", ...level, rising, radius: arc })),
  fc
    .tuple(levels, side, sideways)
    .map(([level, rising, position]): Profile => ({ shape: "step", ...level, rising, position })),
  fc.record({ shape: fc.constant("vee"), angle: within(LIMITS.veeAngle), centre: sideways, height }),
  fc.record({
    shape: fc.constant("free"),
    start: point,
    legs: fc.array(leg, { minLength: LIMITS.legs.min, maxLength: 8 }),
  }),
);

const size = within(LIMITS.opening);
const outline: fc.Arbitrary<Outline> = fc.oneof(
  fc.record({ shape: fc.constant("round"), diameter: size }),
  fc.record({ shape: fc.constantFrom("rectangle", "slot"), width: size, length: size, turn: within(LIMITS.turn) }),
);

const id = fc.stringMatching(/^[a-z0-9-]{1,40}$/);
const base = { on: fc.boolean(), id };
const end = oneOf(CHOICES.end);

const cut: fc.Arbitrary<Cut> = fc.oneof(
  fc.record({
    ...base,
    kind: fc.constant("plane"),
    end,
    angle: within(LIMITS.planeAngle),
    direction,
    at: oneOf(CHOICES.planeAt),
    height,
  }),
  fc.record({ ...base, kind: fc.constant("shaped"), end, direction, profile }),
  fc.record({
    ...base,
    kind: fc.constant("opening"),
    outline,
    direction,
    height,
    offset: sideways,
    through: oneOf(CHOICES.through),
  }),
);

const part: fc.Arbitrary<PipePart> = fc
  .record({
    kind: fc.constant("pipe"),
    diameter: within(LIMITS.diameter),
    basis: oneOf(CHOICES.basis),
    thickness: fc.double({ min: 0, max: 0.49, noNaN: true }),
    length: within(LIMITS.length),
    attitude: oneOf(CHOICES.attitude),
    cuts: fc.uniqueArray(cut, { maxLength: 6, selector: ({ id }) => id }),
  })
  .map((pipe) => ({ ...pipe, thickness: pipe.thickness * pipe.diameter }));

const seam: fc.Arbitrary<Seam> = fc.oneof(
  fc.record({ at: oneOf(CHOICES.namedSeam) }),
  fc.record({ at: fc.constant("angle"), angle: direction }),
);

const width = within(LIMITS.allowance);

const joint: fc.Arbitrary<SeamJoint> = fc.oneof(
  fc.record({ kind: fc.constant("butt"), gap: within(LIMITS.rootGap) }),
  fc.record({ kind: fc.constant("lap"), width, share: within(LIMITS.lapShare) }),
  fc.record({ kind: fc.constant("grooved"), width, share: within(LIMITS.groovedShare) }),
);

const finish: fc.Arbitrary<EdgeFinish> = fc.oneof(
  fc.record({ kind: fc.constant("none") }),
  fc.record({ kind: fc.constantFrom("hem", "double-hem"), width }),
  fc.record({ kind: fc.constant("wired"), wire: within(LIMITS.wire), thickness: fc.boolean() }),
  fc.record({ kind: fc.constant("flange"), width, slits: fc.oneof(fc.constant(0), within(LIMITS.slits)) }),
);

const plate = fc.option(fc.record({ fit: oneOf(CHOICES.plateFit), gap: within(LIMITS.plateGap) }));

const fabrication: fc.Arbitrary<FabricationChoices> = fc.record({
  purpose: oneOf(CHOICES.purpose),
  surface: oneOf(CHOICES.surface),
  kFactor: within(LIMITS.kFactor),
  paper: within(LIMITS.paper),
  hand: oneOf(CHOICES.hand),
  material: oneOf(CHOICES.material),
  density: fc.option(within(LIMITS.density)),
  gauge: fc.option(oneOf(CHOICES.gauge)),
  quantity: fc.integer(LIMITS.quantity),
  seam: joint,
  edges: fc.record({ top: finish, bottom: finish }),
  plates: fc.record({ top: plate, bottom: plate }),
});

const text = fc.string({ unit: "grapheme", maxLength: 20 });

const marking: fc.Arbitrary<Marking> = fc.record({
  tolerance: within(LIMITS.lengthTolerance),
  angle: within(LIMITS.angleTolerance),
  girth: oneOf(CHOICES.girthRule),
  items: fc.uniqueArray(fc.record({ id, text, marks: within(LIMITS.marks), by: oneOf(CHOICES.markedBy) }), { maxLength: 5, selector: (item) => item.id }),
});

const typed = fc.array(fc.record({ at: text, text }), { maxLength: 5 });
const readings: fc.Arbitrary<ReadingSheet> = fc.record({ scale: fc.option(oneOf(CHOICES.drawnScale)), count: text, start: text, along: oneOf(CHOICES.along), values: typed, marks: typed });

const exercise: fc.Arbitrary<ExerciseChoices> = fc.record({
  ranges: fc.array(fc.record({ field: fc.string({ maxLength: 40 }), from: within(LIMITS.rangeEnd), to: within(LIMITS.rangeEnd), step: within(LIMITS.rangeStep) }), { maxLength: 4 }),
  seams: fc.array(seam, { maxLength: 4 }),
  hands: fc.array(oneOf(CHOICES.hand), { maxLength: 2 }),
  keeps: fc.record({ inside: fc.boolean(), ordinate: within(LIMITS.leastOrdinate), sheet: fc.option(fc.record({ width: within(LIMITS.room), height: within(LIMITS.room) })) }),
  seed: fc.integer(LIMITS.seed),
});

/** Jobs of the present version, all fields given. */
export const jobArbitrary: fc.Arbitrary<Job> = fc.record({
  format: fc.constant("flatwright-job"),
  version: fc.constant(2),
  title: fc.string({ unit: "grapheme", maxLength: 40 }),
  note: fc.string({ unit: "binary", maxLength: 200 }),
  units: oneOf(CHOICES.units),
  part,
  development: fc.record({
    seam,
    stations: fc.integer(LIMITS.stations),
    critical: fc.boolean(),
    extra: fc.array(direction, { maxLength: 8 }),
    face: oneOf(CHOICES.face),
  }),
  drawing: fc.record({ projection: oneOf(CHOICES.projection), sheetScale: fc.option(oneOf(CHOICES.drawnScale)) }),
  fabrication,
  marking,
  readings: fc.option(readings),
  exercise,
});
