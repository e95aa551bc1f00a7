import { say } from "./store";

// The way to all changes of the job. They are fetched when work is kept that must be taken up, else at the first touch of
// the page: the first drawing needs none of them.

export type Changes = typeof import("./changes");

let fetched: Changes | null = null;

/** Fetches them, once; `takeUp`: with the work kept in this browser on the board. */
export async function fetchChanges(takeUp = false): Promise<Changes> {
  const changes = await import("./changes");
  if (!fetched) changes.begin(takeUp);
  return (fetched = changes);
}

/** Makes a change: in the very moment when they have been fetched, so that it is kept also when the page is being left. */
export function changing(act: (by: Changes) => void): void {
  if (fetched) act(fetched);
  else fetchChanges().then(act, sayNotFetched);
}

export function sayNotFetched(): void {
  say({ kind: "not-fetched" });
}
