import type { TradeWords } from "../../drawing/tradeWords";

// The words of the board's own verbs, loaded when the page is first touched.

export const boardWords = {
  moving: "Look at the board",
  views: "Look at one view",
  fit: "Fit",
  closer: "Closer",
  further: "Further",
  toView: (view: string) => `Show only: ${view}`,
  full: "Full screen",
  leaveFull: "Leave full screen",
  keys: "Drag the paper to move it. Ctrl and the wheel, two fingers, + and − look closer and further; 0 fits; Shift and the arrow keys move.",

  symbol: { first: "First-angle projection", third: "Third-angle projection" },
  projected: "Projection lines",
  whose: { hand: "station in hand", kept: "kept stations", all: "all stations" },
  keep: "Keep this station",
  letGo: "Let this station go",
  between: "Between stations",
  betweenHelp: ({ girth }: TradeWords) => `Point anywhere along the ${girth}, not only at stations. Alt does the same while it is held.`,

  snap: "Snap",
  snapHelp: "Dragged handles take round numbers and what fits. Alt does the other while it is held.",

  smooth: "Smooth curve",
  smoothTitle: "The smooth curve against the true edge",
  smoothLegend: "Thick: the true edge. Dashed: the smooth curve through the stations.",
  ends: { top: { upright: "Top", lying: "Right end" }, bottom: { upright: "Bottom", lying: "Left end" } },
  scale: (letter: string, scale: number) => `${letter}  ${scale >= 1 ? `${Number(scale.toPrecision(1))}:1` : `1:${Math.round(1 / scale)}`}`,
  strays: (end: string, by: string, at: string) => `${end}: strays ${by} at ${at}.`,
  follows: (end: string) => `${end}: the curve is the edge.`,
  noCurve: (end: string) => `${end}: no curve, for no two stations side by side meet the edge.`,
  within: (tolerance: string) => `Within ${tolerance}.`,
  addStation: "Add this station",
  useStations: (count: number) => `Use ${count} stations`,
  added: (angle: string) => `Station added at ${angle}`,
} as const;
