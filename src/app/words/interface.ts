import { capital, type TradeWords } from "../../drawing/tradeWords";

// The words of the screen: header, board, rod, files, print, settings, banners.

export const words = {
  product: "Flatwright",
  untitled: "Untitled pipe",
  title: "Title of the job",
  note: "Note",
  verbs: { undo: "Undo", redo: "Redo", new: "New", open: "Open", save: "Save", earlier: "Earlier work", examples: "Examples", rollUp: "Roll up", print: "Print and cut", settings: "Settings" },
  verbsLabel: "Job",
  moreVerbs: "More",
  /** What was done, and to which part: "Remove: Round opening". */
  done: (verb: string, what: string) => `${verb}: ${what}`,
  undone: (what: string) => `Undone: ${what}`,
  redone: (what: string) => `Done again: ${what}`,
  openFile: "Job file to open",
  close: "Close",
  skip: "Skip to the description",
  purposes: { label: "Purpose", develop: "Develop", teach: "Teach", check: "Check" },

  description: "Description",
  lengthsIn: { mm: "Lengths in millimetres.", inch: "Lengths in inches." },
  firstWords: "This is an example: change any number, or",
  beginOwn: "begin a pipe of your own",
  explain: "Explain",
  explainTitle: "Say what each field means (F1)",

  board: "Board",
  boardTitle: (title: string, { threeViews, pattern }: TradeWords) => `${title}: ${threeViews} and ${pattern}`,
  boardDescription: (projection: "first" | "third", { element }: TradeWords) => `Drawn in ${projection} angle. Point at a station to see its ${element} in every view; the table under the board has every figure.`,
  stationKeys: "Arrow keys move from station to station.",

  rod: ({ girth }: TradeWords) => `${capital(girth)} rod`,
  rodHelp: (unit: string) => `Sweep along the rod to take a station in hand. Lengths in ${unit}.`,
  table: {
    caption: "Station table",
    station: "Station",
    angle: "From the front",
    girth: ({ along }: TradeWords) => along,
    top: { upright: "Top", lying: "Right end" },
    bottom: { upright: "Bottom", lying: "Left end" },
    length: ({ element }: TradeWords) => capital(element),
    from: "Opening from",
    to: "Opening to",
    none: "—",
    added: "added",
    critical: "critical",
  },
  readout: {
    station: (label: string) => `Station ${label}`,
    between: (before: string, after: string) => `Between ${before} and ${after}`,
    angle: (angle: string) => `${angle} from the front`,
    girth: (girth: string, of: TradeWords) => `${of.girth} ${girth}`,
    length: (length: string) => `true length ${length}`,
    from: (bottom: string, top: string, unit: string) => `${bottom} to ${top} ${unit}`,
    none: "nothing kept here",
  },

  message: {
    unreadableAutosave: "The job kept in this browser could not be read. It has been put aside, and a new one begun.",
    noStorage: "This browser keeps nothing here: save the job to a file before you leave.",
    saveToFile: "Save to a file",
    openElsewhere: "This work is open in another tab too. What you change here is kept as a copy of its own.",
    notFetched: "A part of the program could not be fetched. When there is a connection again, load the page anew: your work is kept.",
    newer: "A newer version is ready.",
    reload: "Reload",
    refused: "That change was not made.",
    file: (name: string) => `“${name}” was not opened.`,
    setAside: (title: string) => `“${title}” has been set aside.`,
    bringBack: "Bring it back",
    dismiss: "Dismiss",
    failed: "This could not be worked out; the last good drawing stays.",
  },

  broken: {
    title: "Something broke on this page",
    text: "Your job is kept. Save it to a file, then load the page again.",
    save: "Save the job",
    reload: "Load the page again",
    fresh: "Load with a new job",
  },

  drop: "Drop a job file to open it",
  printHint: "Choose Print and cut at the top of the page: it makes a PDF that prints true to size.",
} as const;
