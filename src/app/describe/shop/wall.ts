import { DENSITIES, type FabricationChoices, type Job } from "../../../core/index";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type Token } from "../token";
import { shopChoice, shopNumber } from "./shopField";

// What is said about the wall of the pipe: its neutral line, the surface cuts are found on, what it weighs.

/** "The neutral line lies [0.5] of the thickness from the inside." */
export function neutralTokens({ fabrication }: Job): Token[] {
  return [
    text("The neutral line lies "),
    shopNumber("kFactor", "ratio", shopWords.fields.neutral, fabrication.kFactor, (f, kFactor) => ({ ...f, kFactor })),
    text(" of the thickness from the inside."),
  ];
}

/** "The cuts’ heights are found on [the mean surface]." */
export function surfaceTokens({ fabrication }: Job): Token[] {
  return [
    text("The cuts’ heights are found on "),
    shopChoice("surface", shopWords.fields.surface, fabrication.surface, optionsOf(shopWords.surface), (f, value) => ({ ...f, surface: value as FabricationChoices["surface"] }), "mean"),
    text("."),
  ];
}

/** "The sheet weighs [7850] kg/m³." */
export function densityTokens({ fabrication: { density, material } }: Job): Token[] {
  return [text("The sheet weighs "), shopNumber("density", "count", shopWords.fields.density, density ?? DENSITIES[material], (f, value) => ({ ...f, density: value })), text(" kg/m³.")];
}
