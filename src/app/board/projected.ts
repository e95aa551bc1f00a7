import { create } from "zustand";
import { useApp } from "../store/store";

/** Whose projection lines stand on the board. */
export type Projected = "hand" | "kept" | "all";

/** Kept: indices into the stations of the piece. */
export const useProjected = create<{ readonly whose: Projected; readonly kept: readonly number[] }>()(() => ({ whose: "hand", kept: [] }));

export function project(whose: Projected): void {
  useProjected.setState({ whose });
}

/** Keeps the projection lines of a station, or lets them go; to keep one shows the kept ones. */
export function toggleKept(station: number): void {
  useProjected.setState(({ whose, kept }) =>
    kept.includes(station) ? { kept: kept.filter((one) => one !== station) } : { whose: whose === "hand" ? "kept" : whose, kept: [...kept, station] });
}

// With other stations the numbers mean other places.
useApp.subscribe((now, before) => {
  if (now.development !== before.development && now.development.pieces[0]?.stations.length !== before.development.pieces[0]?.stations.length) useProjected.setState({ kept: [] });
});
