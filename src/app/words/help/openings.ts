import { arrow, bothWays, place, size, thin, type HelpTable } from "../../help/helpRow";

// The fields of the openings.

/** What all openings have: where they stand and what they go through. */
function everyOpening(kind: "round" | "rectangle" | "slot"): HelpTable {
  return {
    [`${kind}.direction`]: {
      says: "The side of the pipe the opening is in. In figures: degrees from the front, anticlockwise seen from above.",
      sample: kind, view: "top", marks: [arrow(0, -54, 0, -104)],
    },
    [`${kind}.height`]: { says: "How high the middle of the opening is above the base.", sample: kind, view: "front", marks: [size(0, 0, 0, 75, 72), place(0, 75)] },
    [`${kind}.offset`]: {
      says: "How far the middle stands to the right of the pipe’s own, looking at the wall from outside; less than 0 is to the left.",
      sample: "round aside", view: "front", marks: [size(0, 75, 20, 75, -50), place(20, 75)],
    },
    [`${kind}.through`]: { says: "Only the wall that faces you, or straight on through the wall behind it as well.", sample: kind, view: "top", marks: [arrow(0, -104, 0, 88)] },
  };
}

const turned = "How far it is turned, anticlockwise looking at the wall from outside.";

export const openingsHelp: HelpTable = {
  ...everyOpening("round"),
  "round.outline.diameter": { says: "How wide the round opening is, measured straight across and not round the pipe.", sample: "round", view: "front", marks: [size(-23, 75, 23, 75, -44)] },
  ...everyOpening("rectangle"),
  "rectangle.outline.width": { says: "How wide the opening is across the pipe, measured straight and not round it.", sample: "rectangle", view: "front", marks: [size(-27, 56, 27, 56, -26)] },
  "rectangle.outline.length": { says: "How long the opening is along the pipe.", sample: "rectangle", view: "front", marks: [size(27, 56, 27, 94, -42)] },
  "rectangle.outline.turn": { says: turned, sample: "turned rectangle", view: "front", marks: [thin(0, 75, 64, 75), bothWays(0, 75, 46, 0, 25), thin(0, 75, 58, 102)] },
  ...everyOpening("slot"),
  "slot.outline.width": { says: "How wide the slot is; its ends are half circles of this diameter.", sample: "slot", view: "front", marks: [size(-13, 75, 13, 75, -56)] },
  "slot.outline.length": { says: "How long the slot is in all, over both round ends.", sample: "slot", view: "front", marks: [size(0, 43, 0, 107, -66)] },
  "slot.outline.turn": { says: turned, sample: "turned slot", view: "front", marks: [thin(0, 75, 0, 140), bothWays(0, 75, 50, 90, 115), thin(0, 75, -27, 134)] },
};
