import { openSlots } from "./openSlots";
import { slots, type Slot } from "./slots";
import { surplusSlots } from "./surplusSlots";

/** The slots of closed pages, newest first, after those not needed have been taken away. `own` is the slot of this page. */
export async function closedSlots(own: string): Promise<Slot[]> {
  const inUse = new Set(await openSlots()).add(own);
  for (const { key } of surplusSlots(slots(), inUse, Date.now())) localStorage.removeItem(key);
  return slots().filter(({ key }) => !inUse.has(key));
}
