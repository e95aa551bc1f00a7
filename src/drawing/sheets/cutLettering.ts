// How much lettering of a pattern would the trim lines between its windows run through?

/** A row of windows: where the first begins, the step from one to the next, and what neighbours share, mm. */
export interface Row {
  readonly first: number;
  readonly step: number;
  readonly overlap: number;
}

/** How many of these stretches (mm along the row) hold a trim line: the middle of what two windows share. */
export function cutLettering(stretches: readonly (readonly [number, number])[], { first, step, overlap }: Row): number {
  const before = first + overlap / 2;
  return stretches.filter(([from, to]) => Math.floor((to - before) / step) >= Math.max(1, Math.ceil((from - before) / step))).length;
}
