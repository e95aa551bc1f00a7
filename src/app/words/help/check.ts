import type { MarginHelpTable } from "../../help/MarginHelp";

// What the fields of a check mean, those of the scheme of marks among them.

export const checkHelp: MarginHelpTable = {
  stretchOut: ({ girth }) => `The whole ${girth} as the rule shows it on the paper, from the first seam edge to the last.`,
  spacing: "One space between two stations, measured alone; better: several at once, divided (53/3).",
  angle: "The angle of the cut as drawn in the view that shows it edge on, from square.",
  top: "From the base line up to the edge, along the station's line.",
  bottom: "From the base line up to the lower edge, along the station's line.",
  lower: "From the base line to where the opening begins on the station's line.",
  upper: "From the base line to where the opening ends on the station's line.",
  scale: "How many mm of the piece one mm on the paper stands for. Readings stay as the rule shows them.",
  count: ({ girth }) => `Into how many spaces the student was to divide the ${girth}.`,
  start: "The direction of the student's station 0: degrees from the front, anticlockwise seen from above.",
  along: "Whether the student's numbers run the way this pattern's do.",
  exaggerate: "How many times larger than they are errors are drawn over the pattern.",
  marks: "What the teacher's eye gives. Readings give the figure in italics; what is typed overrules it. For what is taken off: how often.",
  tolerance: "What a length on the paper may be off by and still be right.",
  angleTolerance: "What an angle may be off by and still be right.",
  girthRule: ({ girth }) => `Compass steps round the circle make the ${girth} shorter than π × diameter, by 1.1 % with 12. Here stands which is right.`,
  itemText: "What these marks are for, as it stands on the key.",
  itemMarks: "How many: given in whole or in part, or taken off for each fault.",
  itemSign: "Whether marks are given for what is right, or taken off for what is wrong.",
  itemBy: "What decides: readings by the share of them that is right, the likely mistake for the seam, or the teacher alone.",
};
