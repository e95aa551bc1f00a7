import type { Slot } from "./slots";

// Which slots may go: those of closed pages that say the same as another slot, and very old ones when there are many.
// Work of which there is no other copy stays for a month at least, and the twelve last ones for good.

const alwaysKept = 12;
/** Milliseconds. */
const keptFor = 30 * 24 * 60 * 60 * 1000;

/** Those of `all`, newest first, that may go at the time `now`; slots in use never do. */
export function surplusSlots(all: readonly Slot[], inUse: ReadonlySet<string>, now: number): Slot[] {
  const said = new Set(all.filter(({ key }) => inUse.has(key)).map(({ text }) => text));
  let kept = 0;
  return all.filter(({ key, savedAt, text }) => {
    if (inUse.has(key)) return false;
    if (said.has(text)) return true;
    said.add(text);
    return ++kept > alwaysKept && now - savedAt > keptFor;
  });
}
