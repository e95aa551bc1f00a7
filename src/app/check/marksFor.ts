import type { JudgedReading, Verdict } from "../../core/index";

// Marks by the teacher's scheme: each kind of reading earns its full marks by the share of readings within the tolerance, rounded
// down to half marks, so that a full mark is never given for less than everything.

export type Scheme = Readonly<Record<"girth" | "ordinates" | "angles", number>>;

export interface Marks {
  readonly got: Scheme;
  /** Marks that can be had: only for kinds of which something was read. */
  readonly full: Scheme;
  readonly sum: number;
  readonly of: number;
}

/** The marks of a verdict; a kind of which nothing was read is left out of the full marks. */
export function marksFor({ judged }: Pick<Verdict, "judged">, scheme: Scheme): Marks {
  const of = (kind: keyof Scheme) => judged.filter((one) => kindOf(one) === kind);
  const kinds = ["girth", "ordinates", "angles"] as const;
  const full = byKind((kind) => (of(kind).length > 0 ? scheme[kind] : 0));
  const got = byKind((kind) => {
    const all = of(kind);
    return Math.floor((2 * full[kind] * all.filter(({ within }) => within).length) / Math.max(1, all.length) + 1e-9) / 2;
  });
  const sum = (scheme: Scheme) => kinds.reduce((total, kind) => total + scheme[kind], 0);
  return { got, full, sum: sum(got), of: sum(full) };
}

function byKind(value: (kind: keyof Scheme) => number): Scheme {
  return { girth: value("girth"), ordinates: value("ordinates"), angles: value("angles") };
}

function kindOf({ reading: { line } }: JudgedReading): keyof Scheme {
  return line === "angle" ? "angles" : line === "stretchOut" || line === "spacing" ? "girth" : "ordinates";
}
