// Which thin lines can stand beside one another on paper? Level and upright ones keep the least distance at which two are told apart;
// a line runs only where none runs so near it. Slanted lines stay as they are.

import type { Vec2 } from "../../core/index";
import type { CircleItem, Item, PathItem } from "../display";

/** Least distance between parallel lines, sheet mm (ISO 128: 0.7). */
const APART = 0.7;

/** What is left of a line between two others is drawn from this length on, sheet mm. */
const LEFT = 1;

/** Shorter lines, sheet mm, are ticks of the dividers: they stay, and nothing gives way to them. */
const TICK = 3;

/** Farther out of level or upright than this, sheet mm, a line is slanted. */
const SLANT = 1e-3;

interface Run {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** The items of thin construction, the first of them first: lines, or what has room of them, and the marks of points. */
export function linesApart(items: readonly Item[]): Item[] {
  const taken = { level: lanes(), upright: lanes() };
  const marks: Vec2[] = [];
  return items.flatMap((item): Item[] => {
    if (item.kind === "circle") return isApart(item, marks) ? [item] : [];
    const ends = item.kind === "path" ? endsOf(item) : null;
    if (!ends) return [item];
    const [from, to] = ends;
    if (Math.hypot(to.x - from.x, to.y - from.y) < TICK) return [item];
    const level = Math.abs(to.y - from.y) < SLANT;
    if (!level && Math.abs(to.x - from.x) >= SLANT) return [item];
    const run = level ? { at: from.y, from: Math.min(from.x, to.x), to: Math.max(from.x, to.x) } : { at: from.x, from: Math.min(from.y, to.y), to: Math.max(from.y, to.y) };
    const free = taken[level ? "level" : "upright"].free(run);
    const point = (along: number): Vec2 => (level ? { x: along, y: run.at } : { x: run.at, y: along });
    if (free.length === 1 && free[0]?.from === run.from && free[0].to === run.to) return [item];
    return free.map((part) => ({ ...(item as PathItem), segments: [{ kind: "line", from: point(part.from), to: point(part.to) }] }));
  });
}

/** Ends of a single straight line; null for anything else. */
function endsOf({ segments: [only, more] }: PathItem): [Vec2, Vec2] | null {
  return only?.kind === "line" && !more ? [only.from, only.to] : null;
}

/** Whether the mark of a point stands clear of those before it, which it joins then. */
function isApart({ centre }: CircleItem, marks: Vec2[]): boolean {
  if (marks.some(({ x, y }) => Math.hypot(x - centre.x, y - centre.y) < APART)) return false;
  marks.push(centre);
  return true;
}

/** Parallel lines drawn so far. */
function lanes() {
  const byLane = new Map<number, Run[]>();
  const near = ({ at }: Run) => [-1, 0, 1].flatMap((step) => byLane.get(Math.floor(at / APART) + step) ?? []).filter((other) => Math.abs(other.at - at) < APART - 1e-6);
  return {
    /** The parts of a line that have room; they are taken from then on. */
    free(run: Run): Run[] {
      const left = near(run).reduce<Run[]>((parts, other) => parts.flatMap((part) => without(part, other)), [run]);
      const kept = left.filter(({ from, to }) => to - from >= Math.min(LEFT, run.to - run.from));
      const lane = Math.floor(run.at / APART);
      byLane.set(lane, [...(byLane.get(lane) ?? []), ...kept]);
      return kept;
    },
  };
}

/** What of a line does not run beside another. */
function without(run: Run, { from, to }: Run): Run[] {
  if (to <= run.from || from >= run.to) return [run];
  return [{ ...run, to: from }, { ...run, from: to }].filter((part) => part.to > part.from);
}
