// A board drawn again is much like the one before. Which of its items are the same?

import type { Item } from "../display";

/** The items of `now`; one that says the same as that at its place in `before`, counted from either end, is that very object. */
export function reusedItems(before: readonly Item[], now: readonly Item[]): readonly Item[] {
  const shift = before.length - now.length;
  return now.map((item, i) => [before[i], before[i + shift]].find((one) => isSame(one, item)) ?? item);
}

/** Whether two values of plain data are equal throughout. */
function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((one, i) => isSame(one, b[i]));
  for (const name in b) if (!(name in a)) return false;
  for (const name in a) if (!isSame(a[name as keyof typeof a], b[name as keyof typeof b])) return false;
  return true;
}
