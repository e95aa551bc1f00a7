import type { Drafts } from "./attempt";

/** The drafts but those of these keys. */
export function without(drafts: Drafts, ...keys: readonly string[]): Drafts {
  return Object.fromEntries(Object.entries(drafts).filter(([name]) => !keys.includes(name)));
}
