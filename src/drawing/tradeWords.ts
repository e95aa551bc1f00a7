// The words in which the trade itself differs from country to country: one table, a row a variant. Every screen, drawing and
// file takes them from here.

/** What is told apart is common practice: North American shops and books say the first, British and Commonwealth ones the second. */
export interface TradeWords {
  /** The developed length round the pipe. */
  readonly girth: string;
  /** The row of a table that gives a place along it. */
  readonly along: string;
  /** The views by their full names, and in a word. */
  readonly views: Readonly<Record<"front" | "top" | "side", string>>;
  readonly short: Readonly<Record<"front" | "top" | "side" | "pattern", string>>;
  /** All three views in one phrase. */
  readonly threeViews: string;
  /** The surface laid flat. */
  readonly pattern: string;
  /** A straight line of the surface. */
  readonly element: string;
}

export const TRADE = {
  "stretch-out": {
    girth: "stretch-out",
    along: "Stretch-out",
    views: { front: "front view", top: "top view", side: "side view" },
    short: { front: "Front", top: "Top", side: "Side", pattern: "Pattern" },
    threeViews: "front, top and side view",
    pattern: "flat pattern",
    element: "element",
  },
  girth: {
    girth: "girth",
    along: "Along the girth",
    views: { front: "front elevation", top: "plan", side: "end elevation" },
    short: { front: "Front", top: "Plan", side: "End", pattern: "Development" },
    threeViews: "front elevation, plan and end elevation",
    pattern: "development",
    element: "generator",
  },
} as const satisfies Record<string, TradeWords>;

export type Trade = keyof typeof TRADE;

/** The word at the beginning of a sentence. */
export function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
