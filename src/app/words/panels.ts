import type { TradeWords } from "../../drawing/tradeWords";

// The words of the panels, loaded with them.

export const panelWords = {
  examples: { title: "Examples", text: "Opening one sets the present job aside." },

  earlier: {
    title: "Earlier work",
    text: "Kept in this browser when its page was closed. Opening one sets the present job aside.",
    saved: (at: Date) => `saved ${at.toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" })}`,
  },

  settings: {
    title: "Settings",
    ofJob: "Kept with the job",
    ofDevice: "Kept on this device",
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
