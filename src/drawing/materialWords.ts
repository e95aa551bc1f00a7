// What a sheet is made of, in words. The caller may pass its own.

import type { Material } from "../core/index";

export type MaterialWords = Readonly<Record<Material, string>>;

export const ENGLISH_MATERIAL: MaterialWords = {
  steel: "steel", galvanized: "galvanized steel", stainless: "stainless steel", aluminium: "aluminium", copper: "copper", brass: "brass", zinc: "zinc", lead: "lead",
};
