// The few words a drawing carries. The caller may pass its own.

export interface DrawingWords {
  readonly stretchOut: string;
  readonly insideUp: string;
  readonly outsideUp: string;
  readonly seam: string;
  /** After a diameter that is neither outside nor inside. */
  readonly mean: string;
}

export const ENGLISH: DrawingWords = {
  stretchOut: "stretch-out",
  insideUp: "inside up",
  outsideUp: "outside up",
  seam: "seam",
  mean: "mean",
};
