import { fabricate, type Development, type Fabrication } from "../../core/index";

const made = new WeakMap<Development, Fabrication>();

/** What the shop cuts, marks and buys for this development; worked out once. */
export function fabricationOf(development: Development): Fabrication {
  const known = made.get(development);
  if (known) return known;
  const fabrication = fabricate(development);
  made.set(development, fabrication);
  return fabrication;
}
