import { ENGLISH_MATERIAL, type MaterialWords } from "../../drawing/materialWords";
import { capital, type TradeWords } from "../../drawing/tradeWords";

// The words of the description. A pipe standing has a top and a bottom; tipped over to the right, its
// top end points right and its left side is uppermost.

export interface PlaceWords {
  readonly end: { readonly top: string; readonly bottom: string };
  /** Names of the directions 0, 90, 180 and 270 degrees. */
  readonly sides: readonly [string, string, string, string];
  /** After a height: "70 up". */
  readonly up: string;
  readonly length: string;
  readonly highest: string;
  readonly high: string;
  readonly low: string;
}

const upright: PlaceWords = {
  end: { top: "top", bottom: "bottom" },
  sides: ["front", "right", "back", "left"],
  up: "up",
  length: "high",
  highest: "highest",
  high: "at its highest point",
  low: "at its lowest point",
};

const lying: PlaceWords = {
  end: { top: "right end", bottom: "left end" },
  sides: ["front", "bottom", "back", "top"],
  up: "from the left end",
  length: "long",
  highest: "reaching furthest right at",
  high: "at its furthest point right",
  low: "at its furthest point left",
};

export const clauseWords = {
  places: { upright, lying },
  basis: { outside: "outside", inside: "inside", mean: "mean" },
  attitude: { upright: "upright", lying: "lying" },
  turn: { left: "left", right: "right" },
  rising: { left: "left", right: "right" },
  at: { axis: "on the axis" },
  material: capitals(ENGLISH_MATERIAL),
  face: { inside: "inside up", outside: "outside up" },
  through: { near: "the near wall", both: "both walls" },
  seam: ({ element }: TradeWords) => ({ shortest: `shortest ${element}`, longest: `longest ${element}`, angle: "an angle" }),
  critical: { no: "evenly spaced", yes: "and more at the critical places" },
  ogee: { level: "level at both ends", radius: "of radius" },
  arc: { line: "straight", radius: "an arc by radius", centre: "an arc by centre" },
  long: { no: "the short way", yes: "the long way" },
  angled: "an angle",
  /** Names of the clauses, for their groups and verbs. */
  names: {
    body: "The pipe",
    plane: "Slanted end",
    hollow: "Hollow end",
    nose: "Round end",
    ogee: "Ogee end",
    step: "Stepped end",
    vee: "Vee end",
    free: "Free profile",
    round: "Round opening",
    rectangle: "Rectangular opening",
    slot: "Slot",
    sheet: "Sheet",
    seam: "Seam",
    stations: "Stations",
  },
  add: {
    verb: "Add a cut or an opening",
    plane: "Cut an end at an angle",
    hollow: "Hollow an end",
    nose: "Round an end",
    ogee: "Ogee end",
    step: "Step",
    vee: "Vee",
    free: "Free profile",
    round: "Round opening",
    rectangle: "Rectangular opening",
    slot: "Slot",
  },
  off: "switched off",
} as const;

/** Labels of the fields, read aloud and tied to each input. */
export const fieldWords = {
  diameter: "Diameter",
  basis: "Diameter measured",
  length: "Length of the pipe",
  attitude: "Attitude",
  thickness: "Sheet thickness",
  material: "Material",
  face: "Face marked out",
  end: "Which end",
  angle: "Angle from square",
  highestAt: "Side where it is highest",
  direction: "Direction from the front",
  height: "Height",
  at: "Point the height is measured to",
  seenFrom: "Side it is seen from",
  radius: "Radius",
  centre: "Sideways from the axis, right positive",
  low: "Lower height",
  high: "Upper height",
  rising: "Side it rises to",
  arcs: "How the arcs end",
  position: "Place of the step from the axis, right positive",
  vee: "Included angle",
  startX: "Start, across",
  startZ: "Start, height",
  legKind: (n: number) => `Leg ${n}, kind`,
  legX: (n: number) => `Leg ${n}, across`,
  legZ: (n: number) => `Leg ${n}, height`,
  legRadius: (n: number) => `Leg ${n}, radius`,
  legTurn: (n: number) => `Leg ${n}, turning`,
  legLong: (n: number) => `Leg ${n}, way round`,
  legCentreX: (n: number) => `Leg ${n}, centre across`,
  legCentreZ: (n: number) => `Leg ${n}, centre height`,
  openingDiameter: "Diameter of the opening",
  width: "Width of the opening",
  openingLength: "Length of the opening",
  turned: "Turned, anticlockwise",
  faces: "Side it faces",
  openingHeight: "Height of its centre",
  offset: "Sideways, right positive",
  through: "Walls it goes through",
  seam: "Place of the seam",
  seamAngle: "Seam, direction from the front",
  stations: "Number of stations",
  critical: "Critical places",
  extra: (n: number) => `Added station ${n}, direction from the front`,
} as const;

/** As they begin a sentence. */
function capitals(words: MaterialWords): MaterialWords {
  return Object.fromEntries(Object.entries(words).map(([name, word]) => [name, capital(word)])) as MaterialWords;
}
