import type { TradeWords } from "../../drawing/tradeWords";

// The words of the panels, loaded with them.

export const panelWords = {
  examples: { title: "Examples", text: "Opening one sets the present job aside." },

  earlier: {
    title: "Earlier work",
    text: "Kept in this browser when its page was closed. Opening one sets the present job aside.",
    saved: (at: Date) => `saved ${at.toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" })}`,
  },

  print: {
    title: "Print the pattern, true to size",
    family: "Paper",
    iso: "A sizes",
    us: "US sizes",
    paper: "Sheet",
    auto: "Smallest that holds it",
    one: (paper: string, way: string) => `One sheet of ${paper}, ${way}.`,
    tiles: (count: number, paper: string) => `${count} sheets of ${paper}, to be joined along their marks.`,
    portrait: "portrait",
    landscape: "landscape",
    cautions: [
      "When you print the PDF set scale to 100 % (actual size), never fit to page.",
      "Measure the 100 mm ruler on the sheet before cutting.",
      "Prove the pattern in card or scrap first; check the handedness and which face is up.",
      "Edges of sheet are sharp: gloves and eye protection.",
    ],
    print: "Save as PDF",
    making: (done: number, total: number) => `Page ${done} of ${total} …`,
    cancel: "Cancel",
    failed: "The PDF could not be made.",
  },

  settings: {
    title: "Settings",
    units: "Figures in",
    mm: "millimetres",
    inch: "inches",
    places: "Decimal places",
    inches: "Inches as",
    decimal: "decimals",
    fractions: (denominator: number) => `fractions to 1/${denominator}`,
    mark: "Decimal sign",
    point: "point",
    comma: "comma",
    projection: "Projection",
    first: "first angle",
    third: "third angle",
    words: "Words",
    wordings: ({ girth, views, pattern, element }: TradeWords) => [girth, views.front, views.top, pattern, element].join(", "),
    theme: "Light",
    auto: "as the device",
    light: "paper",
    dark: "slate",
    contrast: "high contrast",
    lettering: "Lettering of the board",
    letterings: ["usual", "larger", "largest"],
  },
} as const;
