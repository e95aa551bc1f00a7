// The words of printed sheets. The caller may pass its own.

import type { Allowance, AllowancePlace, EndPlate, NamedSeam, PipePart } from "../../core/index";
import { ENGLISH_MATERIAL, type MaterialWords } from "../materialWords";
import { TRADE, type TradeWords, capital } from "../tradeWords";
import { type DrawingWords, drawingWords } from "../words";

export interface SheetWords extends DrawingWords {
  readonly untitled: string;
  /** Names of fields. */
  readonly field: Readonly<Record<
    "job" | "part" | "piece" | "quantity" | "sheet" | "material" | "size" | "girth" | "face" | "seamPlace" | "allowances" | "scale" | "sheetNumber" | "date"
    | "printer" | "before" | "document" | "projection" | "drawn" | "checked" | "number" | "cautions" | "description" | "plate" | "stations" | "map" | "hand", string
  >>;
  readonly basis: Readonly<Record<PipePart["basis"], string>>;
  readonly materials: MaterialWords;
  readonly thick: (figure: string) => string;
  readonly gauge: (number: string, table: string) => string;
  readonly outsideAndMean: (diameter: string, basis: string) => string;
  readonly pieceOf: (piece: number, all: number) => string;
  readonly sheetOf: (sheet: number, all: number) => string;
  readonly seamAt: Readonly<Record<NamedSeam, string>>;
  readonly seamAtAngle: (angle: string) => string;
  readonly wrap: string;
  readonly opposite: string;
  readonly net: string;
  /** What an allowance is, by kind and place, with its width. */
  readonly allowance: (kind: Allowance["kind"], place: AllowancePlace, width: string) => string;
  readonly notIncluded: string;
  readonly gapIncluded: (gap: string) => string;
  readonly fullSize: string;
  /** In the place of a scale. */
  readonly noScale: string;
  readonly uncorrected: string;
  readonly corrected: (printer: string, paper: string, across: string, along: string) => string;
  readonly checkRuler: (length: number) => string;
  readonly cautions: readonly string[];
  /** On the cover: what it shows, and how the sheets go together. */
  readonly map: string;
  readonly joining: string;
  /** Of an end plate. */
  readonly plate: (shape: EndPlate["shape"], long: string, short: string) => string;
  readonly weldGap: (gap: string) => string;
  readonly document: Readonly<Record<"template" | "board" | "parts" | "calibration", string>>;
  readonly conventions: string;
  readonly calibration: { readonly title: string; readonly steps: readonly string[]; readonly across: (length: number) => string; readonly along: (length: number) => string; readonly diagonal: (length: string) => string };
  /** Heads of the station table and of the part list. */
  readonly stationTable: Readonly<Record<"station" | "girth" | "bottom" | "top" | "opening" | "length", string>>;
  readonly partList: Readonly<Record<"number" | "name" | "quantity" | "material" | "thickness" | "blank" | "area" | "cutLength" | "mass" | "totalMass" | "total", string>>;
}

const PLACES: Readonly<Record<AllowancePlace, string>> = { "seam-start": "first seam edge", "seam-end": "last seam edge", top: "top", bottom: "bottom" };

const KINDS: Readonly<Record<Allowance["kind"], string>> = {
  lap: "lap", grooved: "grooved seam", hem: "hem", "double-hem": "double hem", wired: "wired edge", flange: "flange",
};

/** The words of printed sheets in the words of the trade. */
export function sheetWords(trade: TradeWords): SheetWords {
  return {
    ...drawingWords(trade),
    untitled: "untitled",
    field: {
      job: "Job", part: "Part", piece: "Piece", quantity: "Number off", sheet: "Sheet metal", material: "Material", size: "Diameter", girth: capital(trade.girth), face: "Face",
      seamPlace: "Seam", allowances: "Allowances", scale: "Scale", sheetNumber: "Sheet", date: "Date", printer: "Printer", before: "Before cutting", document: "Document",
      projection: "Projection", drawn: "Drawn", checked: "Checked", number: "Drawing number", cautions: "Mind", description: "Description", plate: "End plate",
      stations: "Stations", map: "Map", hand: "Hand",
    },
    basis: { outside: "outside", inside: "inside", mean: "mean" },
    materials: ENGLISH_MATERIAL,
    thick: (figure) => `${figure} thick`,
    gauge: (number, table) => `gauge ${number} ${table}`,
    outsideAndMean: (diameter, basis) => `⌀${diameter} ${basis}`,
    pieceOf: (piece, all) => `piece ${piece} of ${all}`,
    sheetOf: (sheet, all) => `Sheet ${sheet} of ${all}`,
    seamAt: {
      shortest: `at the shortest ${trade.element}`, longest: `at the longest ${trade.element}`,
      front: "at the front", right: "on the right", back: "at the back", left: "on the left",
    },
    seamAtAngle: (angle) => `at ${angle}`,
    wrap: "template to wrap round the pipe",
    opposite: "opposite hand",
    net: "net, no allowances",
    allowance: (kind, place, width) => `${KINDS[kind]} ${width} at the ${PLACES[place]}`,
    notIncluded: "Kerf and root gap are not included.",
    gapIncluded: (gap) => `A root gap of ${gap} is taken off; kerf is not included.`,
    fullSize: "1:1",
    noScale: "–",
    uncorrected: "Printed as drawn, no correction.",
    corrected: (printer, paper, across, along) => `Corrected across ${across} %, along ${along} %: ${printer}, ${paper}.`,
    checkRuler: (length) => `Check the ${length} mm ruler before cutting. Print at 100 %, never fitted.`,
    cautions: [
      "Sharp edges: wear gloves and eye protection. Heated zinc gives off harmful fume.",
      "Prove it in card or scrap first; check which face is up, and the hand.",
      "Pressure, flue, gas, lifting and safety parts follow the governing code and licensed practice.",
    ],
    map: "Map of the sheets, not to scale.",
    joining: "Cut each sheet at its dashed lines on the left and above, lay the marks on those of its neighbour.",
    plate: (shape, long, short) => {
      if (shape === "bent") return `bent to the profile, ${long} × ${short} flat`;
      if (shape === "shaped") return long === short ? `part of a disc ⌀${short}` : `part of an ellipse ${long} × ${short}`;
      return shape === "disc" ? `disc ⌀${short}` : `ellipse ${long} × ${short}`;
    },
    weldGap: (gap) => `less a gap of ${gap} all round`,
    document: { template: "Template", board: `Views and ${trade.pattern}`, parts: "Part list", calibration: "Calibration page" },
    conventions: "Lines follow the conventions of ISO 128.",
    calibration: {
      title: "Is this printer true?",
      steps: [
        "Print this page on the paper you will use, at actual size (100 %), not fitted to the page.",
        "Let the paper rest for a few minutes, then measure both rulers from end to end with a steel rule.",
        "Type what you measure. The correction is kept for this printer and this paper, and stated on every page it is used on.",
        "The diagonals of the square are equal when the printer is square.",
      ],
      across: (length) => `across: ${length} mm`,
      along: (length) => `along: ${length} mm`,
      diagonal: (length) => `diagonals ${length} mm`,
    },
    stationTable: { station: "Station", girth: trade.along, bottom: "Bottom", top: "Top", opening: "Openings", length: capital(trade.element) },
    partList: {
      number: "No.", name: "Part", quantity: "Number off", material: "Material", thickness: "Thickness", blank: "Blank", area: "Area", cutLength: "Cut length",
      mass: "Mass each", totalMass: "Mass in all", total: "Together",
    },
  };
}

export const ENGLISH_SHEET: SheetWords = sheetWords(TRADE["stretch-out"]);
