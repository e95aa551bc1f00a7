// The mistakes that are known to be made in a hand-drawn development (common practice of the classroom).

export type Mistake =
  /** Compass steps round the circle instead of equal parts of πd; `done` false where steps are the rule and were not made. */
  | { readonly kind: "chords"; readonly done: boolean }
  /** The diameter of another face of the wall; `throughout`: in the views as well as in the stretch-out. */
  | { readonly kind: "basis"; readonly used: "outside" | "inside" | "mean"; readonly throughout: boolean }
  /** Radius taken for diameter (times 0.5) or diameter for radius (times 2). */
  | { readonly kind: "radius"; readonly times: 0.5 | 2; readonly throughout: boolean }
  /** The seam stands this many degrees (0 to 360) further along the numbering: a half, a quarter, or some stations. */
  | { readonly kind: "seam"; readonly turn: number }
  | { readonly kind: "reversed" }
  /** Every ordinate too long by this (mm on paper, negative: too short). */
  | { readonly kind: "datum"; readonly offset: number }
  /** Ordinates measured downwards from this height of the piece (mm). */
  | { readonly kind: "otherEnd"; readonly from: number }
  /** One space more or less: laid out at the right spacing, with circle and girth so divided, or the girth alone. */
  | { readonly kind: "spaces"; readonly by: 1 | -1; readonly where: "laid" | "divided" | "girth" }
  /** The ordinate of station `at` left out, the following ones each a station too early; or that of the station before taken twice. */
  | { readonly kind: "skipped"; readonly at: number }
  | { readonly kind: "repeated"; readonly at: number }
  /** The cut drawn at this angle (degrees from square; a vee's included angle). */
  | { readonly kind: "angle"; readonly cut: string; readonly angle: number }
  /** The cut turned about the axis by this many degrees. */
  | { readonly kind: "direction"; readonly cut: string; readonly turn: 90 | 180 | 270 }
  /** Lengths this many times what the scale asks for: all of them, or the ordinates only. */
  | { readonly kind: "scale"; readonly factor: number; readonly ordinatesOnly: boolean }
  /** An element between stations, where the edge turns, was not drawn: the edge was led past it. */
  | { readonly kind: "critical"; readonly drawn: "smooth" | "straight" };

export type MistakeKind = Mistake["kind"];

/** What must be told apart: two mistakes of one identity are the same mistake, differently measured. */
export function identityOf(mistake: Mistake): string {
  switch (mistake.kind) {
    case "seam": return `seam ${mistake.turn}`;
    case "spaces": return `spaces ${mistake.by}`;
    case "angle": return `angle ${mistake.cut}`;
    case "direction": return `direction ${mistake.cut} ${mistake.turn}`;
    default: return mistake.kind;
  }
}
