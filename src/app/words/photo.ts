import { capital, type TradeWords } from "../../drawing/tradeWords";
import type { PictureFault } from "../photo/pictureFault";
import type { KnownBy } from "../photo/photo";

// The words of a photograph of the drawing, loaded with the purpose "check".

const corners = ["lower left", "lower right", "upper right", "upper left"] as const;

export const photoWords = {
  title: "Photograph",
  text: "A photograph or scan of the drawing can be read instead of the rule. It stays on this device and is not kept; what is read off it is.",
  how: "Best from well above, in even light; a picture that has been cut down is measured less well.",
  open: "Open a photograph",
  another: "Open another",
  file: "Photograph of the drawing: JPEG, PNG or WebP",
  opening: (name: string) => `“${name}” is being opened.`,
  notOpened: (name: string) => `“${name}” was not opened.`,
  mark: "Known points",
  away: "Put away",

  // The panel in which it is marked.
  panel: "Known points of the photograph",
  close: "Lay it under the drawing",
  by: "Measured by",
  bys: ({ girth }: TradeWords): Readonly<Record<KnownBy, string>> => ({ rectangle: `the rectangle of the ${girth}`, sheet: "the sheet of paper", own: "points of my own" }),
  byText: ({ girth, pattern }: TradeWords): Readonly<Record<KnownBy, string>> => ({
    rectangle: `The corners of the rectangle in which the ${pattern} is drawn. Their places are what they should be: type what the rule shows where it differs. The ${girth} itself is then not judged by the picture.`,
    sheet: `The four corners of the sheet, and both ends of the base line: the ${girth} is measured with them.`,
    own: `Four points or more whose places are known, such as marks of a ruler along and across, and both ends of the base line: the ${girth} is measured with them.`,
  }),
  sheet: "Sheet",
  picture: "Photograph, to be marked",
  pictureHelp: "A press places the point in hand. Arrow keys move it by a pixel, with Shift by ten; plus and minus go closer and further, 0 shows all. Dragging moves the picture.",
  moving: "Move about in the photograph",
  whole: "Whole",
  closer: "Closer",
  further: "Further",
  table: {
    caption: (unit: string) => `Pixels from the upper left of the picture; ${unit} on the paper`,
    point: "Point",
    picture: "In the picture",
    paper: "On the paper",
    off: "Off by",
  },
  pointNames: (by: KnownBy, { girth }: TradeWords): readonly string[] => (by === "rectangle" ? [`${capital(girth)} start`, `${capital(girth)} end`, "Above its end", "Above its start", "Half way along", "Above half way"] : by === "sheet" ? corners.map(capital) : ["Point 1", "Point 2", "Point 3", "Point 4"]),
  ownName: (number: number) => `Point ${number}`,
  ends: { start: "Base line start", end: "Base line end" },
  pixel: (name: string, axis: "x" | "y") => `${name}, pixels ${axis === "x" ? "from the left" : "from the top"}`,
  onPaper: (name: string, axis: "x" | "y") => `${name}, ${axis === "x" ? "across" : "up"} on the paper`,
  marked: (number: number, name: string, x: string, y: string) => `${number} ${name}, ${x} from the left, ${y} from the top`,
  add: "Add a point",
  remove: "Remove",
  removeOf: (name: string) => `Remove ${name}`,
  next: (name: string) => `Press in the picture: ${name}.`,
  wanting: (points: number, base: boolean) => (points > 0 ? `${points === 1 ? "One more point is" : `${points} more points are`} to be placed${base ? ", and the base line" : ""}.` : "Both ends of the base line are to be placed."),
  residual: (worst: string, name: string) => `The points agree within ${worst}; ${name} the least.`,
  exact: "Four points always agree: add one or two more, and it shows how well.",
  unsure: (size: string, where: string) => `With marks a pixel off, the picture is true to about ${size} at its worst place, ${where}.`,
  /** From the foot up, from left to right. */
  places: [["the lower left", "the middle of the foot", "the lower right"], ["the left side", "the middle", "the right side"], ["the upper left", "the middle of the top", "the upper right"]],
  more: (sure: string, few: boolean) => `For ${sure}, mark more points${few ? ", six or more," : ""} all round the drawing and best near there too${few ? "" : ", or photograph it from straight above and as large as may be"}.`,
  lens: "The bend of the lens is taken out.",
  noLens: (points: number) => `From ${points} points on, the bend of the lens is taken out too.`,
  length: (length: string, { girth }: TradeWords) => `${capital(girth)} as drawn: ${length}.`,
  takeLength: ({ girth }: TradeWords) => `Take it as the ${girth}`,

  // On the board.
  laying: "The picture is being laid under the drawing.",
  opacity: "Seen",
  edge: "Edge",
  way: "Read by",
  ways: { press: "pressing on each crossing", trace: "tracing the curve" },
  typed: "Fields already filled",
  typeds: { kept: "are kept", replaced: "are replaced" },
  turn: (station: string, { element }: TradeWords) => `${station} is next: press on the board where the drawn curve crosses its ${element}.`,
  done: (unread: readonly string[]) => (unread.length === 0
    ? "The last station is read, and none is missing. A further press corrects the station nearest to it."
    : `The last station has had its turn. Not read yet: ${unread.slice(0, 8).join(", ")}${unread.length > 8 ? " …" : ""}.`),
  trace: "Draw along the curve on the board with the button or finger down.",
  back: "Back",
  skip: "Skip",
  takeBack: "Take back",
  taken: (station: string, value: string) => `${station}: ${value}.`,
  typedThere: (station: string, typed: string, value: string) => `${station} was typed as ${typed}; the picture gives ${value}.`,
  replace: "Take the picture's",
  traced: (count: number, kept: number) => `${count === 1 ? "One reading" : `${count} readings`} taken${kept > 0 ? `; ${kept} typed before ${kept === 1 ? "is" : "are"} kept` : ""}.`,
  nothingTraced: "The line crosses nothing that is read.",
  takenBack: (station: string) => `Taken back: ${station}.`,
  level: (station: string) => `${station}: height on the picture`,
  levelHelp: "Arrow up and down move the cross, Page up and down ten times as far; Enter takes the reading; left and right go to another station.",

  fault: (fault: PictureFault): string => {
    switch (fault.kind) {
      case "empty":
        return "The file is empty.";
      case "not-a-picture":
        return "It is no JPEG, PNG or WebP picture.";
      case "heif":
        return "It is a HEIF picture (.heic), which cannot be opened here: save it as JPEG, or let the camera take JPEG pictures.";
      case "pdf":
        return "It is a PDF file: save its page as a picture, JPEG or PNG.";
      case "damaged":
        return "The picture is damaged and cannot be shown.";
      case "too-small":
        return "The picture is too small for anything to be read off it.";
      case "too-large":
        return `The file has ${fault.megabytes} megabytes: at most 120 can be opened.`;
      case "too-many-pixels":
        return `The picture has ${fault.megapixels} megapixels: at most 40 can be opened. Save a smaller copy.`;
      case "not-here":
        return "This browser could not open it. There may not be memory enough for so large a picture.";
    }
  },
} as const;
