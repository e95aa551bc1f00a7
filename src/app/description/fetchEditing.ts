import { fetchChanges } from "../store/changing";

// The part of number fields that only a hand needs, fetched at the first touch of the page.

export type Editing = typeof import("./editing");

let fetched: Editing | null = null;

/** Fetches it, once. */
export async function fetchEditing(): Promise<Editing> {
  const [editing] = await Promise.all([import("./editing"), fetchChanges()]);
  return (fetched = editing);
}

/** What has been fetched: then a change is made in the very moment it is asked for, also when the page is being left. */
export function fetchedEditing(): Editing | null {
  return fetched;
}
