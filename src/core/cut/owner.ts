// Whose edge is it? Each edge of a piece belongs to a square end, the seam, or one of the job's cuts.

export type Owner =
  | { readonly kind: "top" }
  | { readonly kind: "bottom" }
  | { readonly kind: "seam" }
  | { readonly kind: "cut"; readonly index: number; readonly id: string };

/** Whether two edges belong to the same feature. */
export function sameOwner(a: Owner, b: Owner): boolean {
  return a.kind === "cut" && b.kind === "cut" ? a.index === b.index : a.kind === b.kind;
}
