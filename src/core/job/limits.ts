// The one table of units, ranges, choices and defaults; read by the checking, the app and the docs.

/** Bounds of a number, text length or list length; both ends allowed. `default` is filled in when the field is left out. */
export interface Limit {
  unit: "mm" | "deg" | "characters" | "entries" | "count" | "ratio" | "kg/m³";
  min: number;
  max: number;
  default?: number;
}

/**
 * Ranges by what is measured. The upper ends are far beyond any workshop: they keep a slip of the keyboard from
 * asking for a kilometre, and every result well inside double precision.
 */
export const LIMITS = {
  /** Of the text of a whole file. */
  file: { unit: "characters", min: 0, max: 1_000_000 },
  title: { unit: "characters", min: 0, max: 120 },
  note: { unit: "characters", min: 0, max: 2000 },
  id: { unit: "characters", min: 1, max: 40 },
  diameter: { unit: "mm", min: 1, max: 20_000 },
  /** Also less than leaves a bore: half an outside diameter, or a mean diameter. */
  thickness: { unit: "mm", min: 0, max: 10_000, default: 0 },
  length: { unit: "mm", min: 1, max: 50_000 },
  cuts: { unit: "entries", min: 0, max: 64 },
  /** Heights from the base line, and z of profile points. */
  height: { unit: "mm", min: -100_000, max: 100_000 },
  /** Measures across the view, and x of profile points. */
  sideways: { unit: "mm", min: -100_000, max: 100_000, default: 0 },
  /** Directions about the axis. */
  direction: { unit: "deg", min: -360, max: 360, default: 0 },
  /** Of a plane, from square. */
  planeAngle: { unit: "deg", min: 0, max: 89.9 },
  /** Included angle of a vee. */
  veeAngle: { unit: "deg", min: 1, max: 179 },
  radius: { unit: "mm", min: 0.01, max: 1_000_000 },
  /** Diameter, width and length of an opening. */
  opening: { unit: "mm", min: 0.01, max: 100_000 },
  /** Of an opening in its own plane. */
  turn: { unit: "deg", min: -360, max: 360, default: 0 },
  legs: { unit: "entries", min: 1, max: 64 },
  stations: { unit: "count", min: 4, max: 360, default: 12 },
  extra: { unit: "entries", min: 0, max: 64 },
  /** Place of the neutral line in the thickness, from the inside. */
  kFactor: { unit: "ratio", min: 0, max: 1, default: 0.5 },
  /** Thickness of a wrap-round template. */
  paper: { unit: "mm", min: 0, max: 10, default: 0.1 },
  density: { unit: "kg/m³", min: 100, max: 30_000 },
  quantity: { unit: "count", min: 1, max: 100_000, default: 1 },
  /** Between the edges of a butt seam. */
  rootGap: { unit: "mm", min: 0, max: 1000, default: 0 },
  /** Width of a lap, a grooved seam, a hem, a flange. */
  allowance: { unit: "mm", min: 0.1, max: 5000 },
  /** What part of the seam's allowance goes on the edge where the girth begins. */
  lapShare: { unit: "ratio", min: 0, max: 1, default: 1 },
  groovedShare: { unit: "ratio", min: 0, max: 1, default: 0.5 },
  /** Diameter of the wire in a wired edge. */
  wire: { unit: "mm", min: 0.1, max: 100 },
  /** Pitch of the slits in a flange, where it is slit; closer than this no tongue is left to bend (common practice). */
  slits: { unit: "mm", min: 2, max: 10_000 },
  /** Numbers that differ from student to student. */
  ranges: { unit: "entries", min: 0, max: 32 },
  /** The path of such a number in the job. */
  rangeField: { unit: "characters", min: 0, max: 120 },
  /** In mm or degrees, as its number. */
  rangeEnd: { unit: "mm", min: -100_000, max: 100_000 },
  rangeStep: { unit: "mm", min: 0.001, max: 100_000 },
  seams: { unit: "entries", min: 0, max: 16 },
  hands: { unit: "entries", min: 0, max: 2 },
  leastOrdinate: { unit: "mm", min: 0, max: 50_000, default: 0 },
  /** Width and height the pattern must fit into. */
  room: { unit: "mm", min: 1, max: 100_000 },
  seed: { unit: "count", min: 0, max: 999_999, default: 1 },
  plateGap: { unit: "mm", min: 0, max: 1000, default: 0 },
  /** Of readings off a drawing, on the paper. */
  lengthTolerance: { unit: "mm", min: 0.01, max: 100, default: 1 },
  angleTolerance: { unit: "deg", min: 0.01, max: 45, default: 1 },
  /** Of one item of a scheme; below 0 they are taken off. */
  marks: { unit: "count", min: -100, max: 100 },
  markItems: { unit: "entries", min: 0, max: 60 },
  markText: { unit: "characters", min: 0, max: 200 },
  /** Readings of a sheet. */
  typed: { unit: "entries", min: 0, max: 2000 },
} as const satisfies Record<string, Limit>;

/** The words a field may hold; `default` is filled in when the field is left out. */
export const CHOICES = {
  units: { of: ["mm", "inch"], default: "mm" },
  basis: { of: ["outside", "inside", "mean"], default: "outside" },
  attitude: { of: ["upright", "lying"], default: "upright" },
  end: { of: ["top", "bottom"] },
  planeAt: { of: ["axis", "low", "high"], default: "axis" },
  side: { of: ["left", "right"] },
  through: { of: ["near", "both"], default: "near" },
  namedSeam: { of: ["shortest", "longest", "front", "right", "back", "left"], default: "shortest" },
  face: { of: ["inside", "outside"], default: "inside" },
  projection: { of: ["first", "third"], default: "first" },
  purpose: { of: ["blank", "wrap"], default: "blank" },
  surface: { of: ["mean", "outside", "inside", "clear"], default: "mean" },
  hand: { of: ["described", "opposite"], default: "described" },
  material: { of: ["steel", "galvanized", "stainless", "aluminium", "copper", "brass", "zinc", "lead"], default: "steel" },
  gauge: { of: ["us-standard", "manufacturers-standard", "brown-and-sharpe", "birmingham-sheet", "birmingham-wire", "imperial-wire"] },
  seamJoint: { of: ["butt", "lap", "grooved"], default: "butt" },
  edgeFinish: { of: ["none", "hem", "double-hem", "wired", "flange"], default: "none" },
  girthRule: { of: ["exact", "stepped", "either"], default: "exact" },
  markedBy: { of: ["eye", "girth", "ordinates", "angles", "seam"], default: "eye" },
  /** Scales of drawings (ISO 5455, from memory). */
  drawnScale: { of: ["1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200", "1:500", "1:1000", "2:1", "5:1", "10:1"], default: "1:1" },
  along: { of: ["pattern", "against"], default: "pattern" },
  plateFit: { of: ["outside", "mean", "inside"], default: "outside" },
} as const;
