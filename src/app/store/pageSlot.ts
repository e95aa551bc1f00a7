import { holdSlot } from "./openSlots";
import { newSlotKey, putAside, slots, writeSlot, type Slot } from "./slots";

// The slot of this page. A page begins with the work it had before it was loaded again, else with the work last saved,
// and writes to a slot of its own: two pages that began with the same work never write over one another.

/** Where this tab remembers its slot while it is loaded again. */
const tabPlace = "flatwright.slot";
const beginNew = "new";

/** The slot a page began from; free when no other page has it open. */
interface Source {
  readonly key: string;
  release: (() => void) | null;
}

/** The slot of one page. Functions that read or write throw when the browser gives no storage. */
export function createPageSlot() {
  let own = newSlotKey();
  let release: (() => void) | null = null;
  let source: Source | null = null;
  /** What the slot holds now, and what it was begun with when another job was put on the board. */
  let holds: string | null = null;
  let begunWith: string | null = null;
  let freshlyBegun = false;

  /** The name of the slot now. */
  const key = () => own;

  /** What to begin with, if anything is kept. */
  const first = (): Slot | undefined => {
    const named = sessionStorage.getItem(tabPlace);
    if (named === beginNew) {
      sessionStorage.removeItem(tabPlace);
      return undefined;
    }
    const all = slots();
    const found = all.find((slot) => slot.key === named) ?? all[0];
    source = found ? { key: found.key, release: null } : null;
    return found;
  };

  /** Takes the slot, and the one the page began from; true when another page has that one open. */
  const claim = async (): Promise<boolean> => {
    const from = source;
    release = (await holdSlot(own)) ?? null;
    const given = from ? await holdSlot(from.key) : undefined;
    if (from && given) from.release = given;
    if (from !== source) given?.();
    giveUpSource();
    return given === null;
  };

  const write = (text: string): void => {
    writeSlot(own, text);
    sessionStorage.setItem(tabPlace, own);
    if (freshlyBegun) begunWith = text;
    freshlyBegun = false;
    holds = text;
    giveUpSource();
  };

  /** The slot the page began from is not needed once the page's own holds the work that was in it. */
  const giveUpSource = () => {
    if (!source?.release || holds === null) return;
    localStorage.removeItem(source.key);
    source = null;
  };

  /** Whether anything is kept that is not this page's own; never throws. */
  const hasOthers = () => {
    try {
      return slots().some((slot) => slot.key !== own && slot.key !== source?.key);
    } catch {
      return false;
    }
  };

  /** Lets the work stay where it is kept, and begins another slot; false when there is no such work and the slot serves again. */
  const beginAnother = (): boolean => {
    freshlyBegun = true;
    const begunFrom = source;
    begunFrom?.release?.();
    source = null;
    if (holds === null || holds === begunWith) return begunFrom !== null;
    release?.();
    own = newSlotKey();
    void holdSlot(own).then((given) => (release = given ?? null));
    holds = null;
    begunWith = null;
    return true;
  };

  /** Moves what is kept for this page out of the way, and lets the page begin anew when it is loaded again. */
  const forget = (): void => {
    putAside(own);
    if (source) putAside(source.key);
    sessionStorage.setItem(tabPlace, beginNew);
  };

  return { key, first, claim, write, hasOthers, beginAnother, forget };
}
