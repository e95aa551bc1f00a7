// The words that lead from an empty pipe to a first pattern.

export const startWords = {
  title: "Give its diameter and height, then begin with one of these, or add a cut of your own:",
  pieces: {
    slant: "Cut at a slant",
    roof: "Standing on a sloping roof",
    branch: "With a hole for a branch",
    saddle: "Saddled on another pipe",
    mitres: "Mitred at both ends",
    ridge: "Astride a ridge",
  },
} as const;
