import { roundPipe, type FabricationChoices, type Job } from "../../../core/index";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type Token } from "../token";
import { shopChoice, shopNumber } from "./shopField";

/** "It is [a template to wrap round a pipe] measured ⌀ [90] outside, of a sheet [0.1] thick." */
export function purposeTokens({ part, fabrication }: Job): Token[] {
  const { fields } = shopWords;
  const purpose = shopChoice("purpose", fields.purpose, fabrication.purpose, optionsOf(shopWords.purpose), (f, value) => ({ ...f, purpose: value as FabricationChoices["purpose"] }), "blank");
  if (fabrication.purpose === "blank") return [text("It is "), purpose, text(".")];
  return [
    text("It is "),
    purpose,
    text(" measured ⌀ "),
    {
      kind: "number",
      key: "fabrication.measured",
      field: "part.diameter",
      quantity: "length",
      label: fields.measured,
      value: roundPipe(part).outside,
      put: (job, diameter) => ({ ...job, part: { ...job.part, diameter, basis: "outside" } }),
    },
    text(" outside, of a sheet "),
    shopNumber("paper", "length", fields.paper, fabrication.paper, (f, paper) => ({ ...f, paper })),
    text(" thick; outside up."),
  ];
}
