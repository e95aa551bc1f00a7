import { slotPlace } from "./isAnythingKept";

// The works kept in this browser, each in a slot of its own, so that two pages never write over one another.

const asideEnd = ".unreadable";

export interface Slot {
  readonly key: string;
  /** Milliseconds since 1970; 0 when not known. */
  readonly savedAt: number;
  /** The text of the job file. */
  readonly text: string;
}

/** A name no slot has yet. */
export function newSlotKey(): string {
  return `${slotPlace}.${Date.now().toString(36)}${Math.random().toString(36).slice(2)}`;
}

/** All slots, the one last written first; earlier versions kept a single one without an ending of its own. Throws when the browser gives no storage. */
export function slots(): Slot[] {
  const keys = Object.keys(localStorage).filter((key) => key.startsWith(slotPlace) && !key.endsWith(asideEnd));
  return keys.map(slotAt).sort((a, b) => b.savedAt - a.savedAt);
}

/** Throws when the browser has no room or gives none. */
export function writeSlot(key: string, text: string): void {
  localStorage.setItem(key, `${Date.now()}\n${text}`);
}

/** Moves what a slot holds out of the way, word for word; nothing is thrown away. */
export function putAside(key: string): void {
  const text = localStorage.getItem(key);
  if (text === null) return;
  localStorage.setItem(key + asideEnd, text);
  localStorage.removeItem(key);
}

function slotAt(key: string): Slot {
  const kept = localStorage.getItem(key) ?? "";
  const time = /^\d+(?=\n)/.exec(kept)?.[0];
  return time === undefined ? { key, savedAt: 0, text: kept } : { key, savedAt: Number(time), text: kept.slice(time.length + 1) };
}
