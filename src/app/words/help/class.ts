import type { MarginHelpTable } from "../../help/MarginHelp";

// What the fields of a class set mean, by the name each carries.

export const classHelp: MarginHelpTable = {
  range: "Each student gets one of its values, from the first to the last in these steps. Sums, fractions and units may be typed as everywhere.",
  seams: "Each student gets one of those ticked. None ticked, or one alone: the same seam for all.",
  hands: "As described, or its mirror image; with both ticked neighbours cannot copy each other's order of stations.",
  inside: "No student gets a cut that leaves a piece of the square end standing or runs out at the other end, or an opening that runs into anything.",
  ordinate: ({ element }) => `No ${element} of any piece is shorter than this at a station, so that there is something to carry over.`,
  sheet: ({ pattern }) => `How large the ${pattern} may be at full size, lying either way: the drawing paper of the class, or the card for models.`,
  count: "So many sheets are made, their names left to be filled in by hand.",
  list: "One student a line. Students get their pieces in this order: one added at the end changes nobody else's.",
  columns: "Where the names stand in the list, a second part of the name if there is one, and the class.",
  heads: "Whether the first row says what the columns are; it is no student then.",
  qr: "A camera that reads the code opens this address with the piece in it. The address must be one that the device reaches; no name is in the code.",
  code: "The short code printed in the title block. It stands for the piece as long as the exercise stays as it is: save the job with it.",
};
