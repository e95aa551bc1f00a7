import { create } from "zustand";

// The address at which a class reaches this program, printed in the codes of the sheets; kept on this device.

const place = "flatwright.place";

/** `typed` empty: where this page is. `on`: whether sheets carry a code at all. */
export const usePlace = create<{ readonly typed: string; readonly on: boolean }>()(() => ({ typed: kept(), on: true }));

export function typePlace(typed: string): void {
  usePlace.setState({ typed });
  try {
    localStorage.setItem(place, typed);
  } catch {
    // Without storage the address lasts until the page is left.
  }
}

/** Where this page is, without a part after "#". */
export function placeHere(): string {
  return window.location.href.replace(/[?#].*$/, "");
}

export type PlaceFault = "no-address" | "this-machine";

/** What is wrong with an address; one of this machine alone is none for others. */
export function placeFault(address: string): PlaceFault | null {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    return "no-address";
  }
  if (!/^https?:$/.test(url.protocol) || url.hash !== "" || url.search !== "") return "no-address";
  return /^(localhost|127\.|\[::1\]|.*\.localhost$)/.test(url.hostname) ? "this-machine" : null;
}

function kept(): string {
  try {
    return localStorage.getItem(place) ?? "";
  } catch {
    return "";
  }
}
