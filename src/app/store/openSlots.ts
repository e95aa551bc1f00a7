// Which slots belong to pages that are open: each page holds a lock of the name of its slot for as long as it lives,
// and the browser lets go of it when the page is closed or breaks. Without locks (a page served without https from
// another machine) nothing is known of other pages; their slots are left alone all the same.

/** Long enough for the page that was here before a reload to be gone. */
const patience = 2000;

/**
 * Takes a slot for this page: the function that gives it back, or null when another page holds it.
 * Undefined when the browser cannot tell. A lock that is granted in the very moment in which this page opens another
 * is dropped by some browsers, with an error that is no time-out: it is asked for `again`.
 */
export async function holdSlot(key: string, again = true): Promise<(() => void) | null | undefined> {
  const { locks } = navigator as { locks?: LockManager };
  if (!locks) return undefined;
  return new Promise((resolve) => {
    const held = locks.request(key, { signal: AbortSignal.timeout(patience) }, () => new Promise<void>((release) => resolve(release)));
    held.catch(({ name }: DOMException) => resolve(name === "TimeoutError" ? null : again ? holdSlot(key, false) : undefined));
  });
}

/** The slots of all open pages, this one's too; undefined when the browser cannot tell. */
export async function openSlots(): Promise<ReadonlySet<string> | undefined> {
  const { locks } = navigator as { locks?: LockManager };
  const held = (await locks?.query())?.held;
  return held && new Set(held.flatMap(({ name }) => name ?? []));
}
