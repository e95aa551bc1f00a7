import type { FabricationChoices, Job } from "../../../core/index";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type Token } from "../token";
import { shopChoice, shopNumber } from "./shopField";

/** "Make [2], [as described]." */
export function countTokens({ fabrication: { quantity, hand } }: Job): Token[] {
  const { fields } = shopWords;
  return [
    text("Make "),
    shopNumber("quantity", "count", fields.quantity, quantity, (f, value) => ({ ...f, quantity: value })),
    text(", "),
    shopChoice("hand", fields.hand, hand, optionsOf(shopWords.hand), (f, value) => ({ ...f, hand: value as FabricationChoices["hand"] }), "described"),
    text("."),
  ];
}
