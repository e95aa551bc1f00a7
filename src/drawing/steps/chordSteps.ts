// Stepping chords round the circle with compasses or dividers instead of laying off the girth: n chords of a circle measure
// 2 r n sin(π / n), always less than its length 2 π r (elementary).

export interface ChordSteps {
  /** One chord and the arc it stands for, mm. */
  readonly chord: number;
  readonly arc: number;
  /** All chords together, what they are short of the girth, mm, and that as a part of it. */
  readonly total: number;
  readonly short: number;
  readonly part: number;
}

/** The chords of `count` even divisions of a circle of `radius` mm. @throws RangeError for fewer than 2 divisions or no radius. */
export function chordSteps(radius: number, count: number): ChordSteps {
  if (!(radius > 0)) throw new RangeError(`invalid radius: ${radius}; not in (0, ∞)`);
  if (!(count >= 2)) throw new RangeError(`invalid count: ${count}; not in [2, ∞)`);
  const girth = 2 * Math.PI * radius;
  const chord = 2 * radius * Math.sin(Math.PI / count);
  const total = count * chord;
  return { chord, arc: girth / count, total, short: girth - total, part: 1 - total / girth };
}
