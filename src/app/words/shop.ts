import type { EdgeFinish, FabricationChoices, GaugeTable, PlateChoice, SeamJoint } from "../../core/index";
import { GAUGES } from "../../core/index";

// The words of the clauses for the shop, loaded with them.

const tables = Object.keys(GAUGES) as GaugeTable[];

export const shopWords = {
  purpose: { blank: "a blank to be rolled", wrap: "a template to wrap round a pipe" } satisfies Record<FabricationChoices["purpose"], string>,
  /** A gauge is never named without its table. */
  tables: Object.fromEntries(tables.map((table) => [table, GAUGES[table].name])) as Record<GaugeTable, string>,
  gauge: (gauge: string, inches: number) => `${gauge} (${Number(inches.toFixed(4))} in)`,
  noGauge: "none",
  surface: { mean: "the mean surface", outside: "the outside", inside: "the inside", clear: "the outside or the inside, whichever keeps clear" } satisfies Record<FabricationChoices["surface"], string>,
  joint: { butt: "a butt joint", lap: "a single lap", grooved: "a grooved seam" } satisfies Record<SeamJoint["kind"], string>,
  share: { 1: "all of it on the first edge", 0.5: "half of it on each edge", 0: "all of it on the last edge", part: "a share" },
  finish: { none: "its net edge", hem: "a single hem", "double-hem": "a double hem", wired: "a wired edge", flange: "a flange" } satisfies Record<EdgeFinish["kind"], string>,
  wired: { no: "without the sheet’s thickness", yes: "with the sheet’s thickness added" },
  slits: { no: "not slit", yes: "slit every" },
  fit: { outside: "outside", mean: "mean", inside: "inside" } satisfies Record<PlateChoice["fit"], string>,
  hand: { described: "as described", opposite: "of the opposite hand" } satisfies Record<FabricationChoices["hand"], string>,

  /** Names of the clauses, for their groups and verbs. */
  names: {
    purpose: "What it is for",
    gauge: "Gauge",
    neutral: "Neutral line",
    surface: "Surface of the cuts",
    joint: "Seam joint",
    edge: { top: "Top edge", bottom: "Bottom edge" },
    plate: { top: "Top plate", bottom: "Bottom plate" },
    density: "Density",
    count: "Number off",
  },

  add: {
    lap: "Single lap seam",
    grooved: "Grooved seam",
    gap: "Root gap",
    hem: "Single hem",
    "double-hem": "Double hem",
    wired: "Wired edge",
    flange: "Flange",
    plate: "End plate",
    gauge: "Sheet by gauge",
    neutral: "Neutral line",
    surface: "Surface of the cuts",
    wrap: "Template to wrap round",
    density: "Density",
    count: "Number off and hand",
  },
  verbs: (name: string) => `${name}, more: remove`,

  fields: {
    purpose: "What it is for",
    measured: "Measured outside diameter",
    paper: "Thickness of the template’s own sheet",
    gauge: "Gauge",
    table: "Gauge table",
    neutral: "Place of the neutral line, from the inside, as a share of the thickness",
    surface: "Surface on which the cuts’ heights are found",
    joint: "Joint of the seam",
    gap: "Root gap",
    lapWidth: "Width of the lap",
    groovedWidth: "Finished width of the grooved seam",
    share: "Where the seam’s allowance goes",
    shareFigure: "Share of it on the first edge",
    end: "Which end",
    finish: "Finish of the edge",
    hem: "Width of the hem",
    wire: "Diameter of the wire",
    thickness: "Thickness with the wire",
    flange: "Width of the flange",
    slit: "Slits of the flange",
    slits: "From slit to slit",
    fit: "Diameter the plate is made to",
    plateGap: "Gap round the plate",
    density: "Density in kg/m³",
    quantity: "Number off",
    hand: "Hand",
  },

  /** What was worked out for a clause, under it. */
  found: {
    sum: (terms: string, total: string) => `${terms} = ${total} added`,
    plain: (total: string) => `${total} added`,
    factor: (factor: number, size: string) => (factor === 1 ? size : `${factor === 2.5 ? "2½" : Number(factor.toFixed(3))} × ${size}`),
    seam: (total: string, begin: string, end: string) => `${total}: ${begin} on the first edge, ${end} on the last`,
    girth: (girth: string, length: string) => `${girth} ${length}`,
    surface: (by: string, station: string) => `At most ${by} off the mean surface, at station ${station}`,
    sameSurface: "Nowhere off the mean surface",
    disc: (diameter: string) => `Disc ⌀ ${diameter}`,
    ellipse: (long: string, short: string) => `Ellipse ${long} × ${short}, before the gap`,
    bent: (width: string, height: string) => `Bent to the profile, ${width} × ${height} flat`,
    shaped: (width: string, height: string) => `Plate within ${width} × ${height}`,
    mass: (each: string, all: string) => `${each} each, ${all} in all`,
  },
} as const;
