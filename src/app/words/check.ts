import type { ReadLine, Reading } from "../../core/index";
import { capital, type TradeWords } from "../../drawing/tradeWords";

// The words of the purpose "check", loaded with it.

const lines: Readonly<Record<ReadLine, string>> = { top: "top", bottom: "foot", lower: "opening from", upper: "to" };

export const checkWords = {
  label: ({ pattern }: TradeWords) => `A hand-drawn ${pattern} checked`,
  begin: ({ pattern }: TradeWords) => `Measure the drawn ${pattern} and type what the rule shows, all in one unit. Enter goes to the next field; leave out what was not measured. A column copied from a spreadsheet can be pasted.`,
  readings: (unit: string) => `Read off the drawing, in ${unit} on the paper`,
  place: "Where",
  read: "Read",
  off: "Off by",
  lines,
  opening: "Opening",
  heads: { top: "Top", bottom: "Foot", lower: "from", upper: "to" } satisfies Record<ReadLine, string>,
  stretchOut: ({ girth }: TradeWords) => capital(girth),
  spacing: "One space",
  angleOf: (number: number, several: boolean) => (several ? `Angle of cut ${number}` : "Angle of the cut"),
  station: (label: string, again: boolean) => (again ? `Station ${label} again` : `Station ${label}`),
  out: "outside what is allowed",
  nothingThere: "nothing there",
  paste: {
    taken: (count: number) => `${count === 1 ? "One cell" : `${count} cells`} taken from what was pasted.`,
    heading: (heads: readonly string[]) => `The heading “${heads.filter((head) => head !== "").join("; ")}” was left out.`,
    leftOut: (heads: readonly string[]) => `No field is for ${heads.map((head) => `“${head}”`).join(", ")}.`,
    named: {
      name: () => "The first column names the stations: each reading went to its own.",
      order: (first: string, last: string) => `The first column, ${first} to ${last}, was taken to count the lines: the readings stand in their order.`,
    },
    otherwise: { name: "Take them in their order", order: "Go by the numbers" },
    mark: (sign: "," | ".", as: "decimal" | "thousands", example: string, read: string) => `${sign === "," ? "Commas" : "Points"} were read as parting ${as === "decimal" ? "decimals" : "thousands"}: “${example}” is ${read}.`,
    turn: (sign: "," | ".", as: "decimal" | "thousands") => `Read the ${sign === "," ? "commas" : "points"} as parting ${as === "decimal" ? "thousands" : "decimals"}`,
    back: "Take the paste back",
  },
  surplus: (cells: readonly string[]) => `There was no field for the last ${cells.length === 1 ? "cell" : `${cells.length} cells`}: ${cells.slice(0, 12).join("; ")}${cells.length > 12 ? " …" : ""}`,
  clear: "Clear the readings",
  bringOver: "Bring over the readings of the piece before",

  overlay: "Print an overlay",
  overlayTitle: "A true-scale PDF to lay over the drawing, on the paper chosen in “Print and cut”",
  overlayFile: "overlay",

  drawing: "The drawing",
  scale: "Drawn at",
  sheetScale: (scale: string) => `Its sheets were made at ${scale}.`,
  count: "Spaces",
  start: "Numbered from",
  atSeam: "the seam",
  along: "Numbered",
  alongs: { pattern: "as the pattern", against: "the other way" },
  drawingHelp: "As the student drew it; left empty, as this piece is. Where it starts: degrees from the front.",
  exaggerate: "Errors drawn",
  times: { 1: "as they are", 5: "5 times", 10: "10 times", 20: "20 times" },

  marks: "Marks",
  marksOf: (item: string) => `Marks: ${item}`,
  of: (full: string) => `of ${full}`,
  offEach: (size: string) => `times −${size}`,
  rightOf: (right: number, read: number) => `${right} of ${read} readings right`,
  marked: (got: string, of: string) => `${got} of ${of} marks.`,
  open: (left: string) => `${left} more are still to be given.`,
  oddMarks: (count: number) => `${count === 1 ? "One field of marks is" : `${count} fields of marks are`} not counted.`,
  setScheme: "Set what is allowed, and a scheme",
  changeScheme: "Change what is allowed, or the scheme",

  allWithin: (count: number, tolerance: string) => (count === 1 ? `The reading is right within ${tolerance}.` : `All ${count} readings are right within ${tolerance}.`),
  outside: (outside: number, count: number, tolerance: string) => `${outside} of ${count} readings ${outside === 1 ? "is" : "are"} off by more than ${tolerance}.`,
  anglesBy: (angle: string, besides: boolean) => (besides ? `(angles ${angle})` : angle),
  largest: (error: string, where: string, mean: string) => `Largest error ${error}, ${where}; ${mean} on average.`,
  stepped: (steps: string, exact: string, allowed: boolean, { girth }: TradeWords) => `The ${girth} was stepped off with chords: ${steps} instead of ${exact}${allowed ? ", as the rule allows" : ""}.`,
  nameOf: (reading: Reading, label: (at: number) => string, { girth }: TradeWords): string => {
    if ("at" in reading) return reading.line === "top" ? `station ${label(reading.at)}` : `station ${label(reading.at)}, ${lines[reading.line]}`;
    return reading.line === "stretchOut" ? girth : reading.line === "spacing" ? "one space" : "the angle of the cut";
  },
} as const;
