import type { End, FabricationChoices, Job, PlateChoice } from "../../../core/index";
import type { PlaceWords } from "../../words/clauses";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type Token } from "../token";
import { shopChoice, shopNumber } from "./shopField";

/** "A plate closes its [top], made to the [outside] diameter less [1] all round." */
export function plateTokens(job: Job, end: End, place: PlaceWords): Token[] {
  const { fit, gap } = job.fabrication.plates[end] ?? newPlate;
  const { fields } = shopWords;
  return [
    text("A plate closes its "),
    shopChoice(`plates.${end}.end`, fields.end, end, optionsOf(place.end), (f, value) => (value === end ? f : { ...f, plates: { top: f.plates.bottom, bottom: f.plates.top } })),
    text(", made to the "),
    shopChoice(`plates.${end}.fit`, fields.fit, fit, optionsOf(shopWords.fit), (f, value) => inPlate(f, end, { fit: value as PlateChoice["fit"] })),
    text(" diameter less "),
    shopNumber(`plates.${end}.gap`, "length", fields.plateGap, gap, (f, value) => inPlate(f, end, { gap: value })),
    text(" all round."),
  ];
}

/** A plate to begin with. */
export const newPlate: PlateChoice = { fit: "outside", gap: 0 };

function inPlate(f: FabricationChoices, end: End, change: Partial<PlateChoice>): FabricationChoices {
  const plate = f.plates[end];
  return plate ? { ...f, plates: { ...f.plates, [end]: { ...plate, ...change } } } : f;
}
