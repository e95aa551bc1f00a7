import { capital, type TradeWords } from "../../drawing/tradeWords";

// The words of what is worked out after the first drawing: how well the stations serve, the pattern measured, the table taken along.

export const measuredWords = {
  copy: "Copy table",
  copied: "Table copied",
  copyFailed: "The browser did not allow copying; save the table instead.",
  csv: "Save as CSV",

  adequacy: {
    tolerance: "How far a smooth curve may stray",
    curve: "A smooth curve ",
    good: (by: string, at: string) => [`strays ${by} at most, near ${at}: within `, "."] as const,
    exact: ["follows the true edge within ", "."] as const,
    enough: (by: string, at: string, count: number) => [`strays up to ${by}, near ${at}; ${count} stations keep it within `, "."] as const,
    noCount: (by: string, at: string) => [`strays up to ${by}, near ${at}; no usual count keeps it within `, "."] as const,
    noCurve: (count: string) => [`cannot be drawn, for no two stations side by side meet the edge; ${count} keeps it within `, "."] as const,
    stations: (count: number | null) => (count === null ? "no usual count" : `a count of ${count}`),
    oneExtra: (angle: string, left: string) => ` One more at ${angle} leaves ${left}.`,
    add: "Add it",
  },

  proof: {
    title: ({ pattern }: TradeWords) => `${capital(pattern)} measured against the pipe`,
    girth: ({ girth }: TradeWords) => capital(girth),
    chords: "Chord steps",
    short: (loss: string, percent: string) => `${loss} short (${percent} %)`,
    area: "Area",
    edges: "Edges",
    closing: "Closes within",
    rollBack: "Rolls back within",
    within: (flat: string, difference: string) => `${flat} ± ${difference}`,
  },
} as const;
