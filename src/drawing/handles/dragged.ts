// What does dragging a handle to a point of the sheet ask for?

import type { Development, Vec2 } from "../../core/index";
import { type Fits, fitsOf } from "./fits";
import type { Fit, PointGrip, SizeGrip, Values } from "./grip";
import type { Handle } from "./handles";
import { snapStep, toFinest, toStep } from "./snapStep";

export interface Dragged {
  readonly values: Values;
  /** What it fits, by snapping. */
  readonly fits: readonly Fit[];
}

/** How near on the sheet, mm, a fit takes hold. */
const REACH = 1.6;

/**
 * The new values of the handle's fields for the handle at `to` on the sheet. `handle` is as it was when it was taken, `development` too.
 * With `snap`, round numbers and what fits are taken when near; without, hundredths.
 */
export function dragged(handle: Handle, to: Vec2, { job, pieces }: Development, snap: boolean): Dragged {
  const [piece] = pieces;
  if (!piece) throw new RangeError("nothing to drag");
  const { grip } = handle;
  const near = { handle, units: job.units, fits: snap ? fitsOf(handle, job, piece) : null };
  return grip.kind === "point" ? pointDragged(grip, to, near) : sizeDragged(grip, to, near);
}

interface Near {
  readonly handle: Handle;
  readonly units: "mm" | "inch";
  /** Null when nothing snaps. */
  readonly fits: Fits | null;
}

function pointDragged(grip: PointGrip, to: Vec2, { handle, units, fits }: Near): Dragged {
  const raw = handle.sight.fromSheet(to);
  const found: Fit[] = [];
  const settled = (axis: "x" | "y"): number => {
    const coordinate = axis === "x" ? grip.across : grip.along;
    if (!coordinate) return grip.point[axis];
    const unit = sheetPerUnit(handle, axis);
    const value = raw[axis];
    if (Math.abs(value - grip.point[axis]) * unit < 1e-6) return grip.point[axis];
    if (!fits) return toFinest(value, coordinate.quantity, units);
    const fit = nearest(axis === "x" ? fits.across : fits.along, (one) => Math.abs(one.value - value) * unit);
    if (fit) found.push(fit);
    return fit ? fit.value : toStep(value, snapStep(coordinate.quantity, units, unit));
  };
  const point = { x: settled("x"), y: settled("y") };
  return { values: point.x === grip.point.x && point.y === grip.point.y ? {} : grip.put(point), fits: found };
}

/** Sheet mm that the handle moves for a mm (or degree) of one coordinate. */
function sheetPerUnit({ grip, sight, at }: Handle, axis: "x" | "y"): number {
  const moved = sight.onSheet({ ...grip.point, [axis]: grip.point[axis] + 1 });
  return Math.hypot(moved.x - at.x, moved.y - at.y);
}

function sizeDragged(grip: SizeGrip, to: Vec2, { handle, units, fits }: Near): Dragged {
  const point = handle.sight.fromSheet(to);
  const value = grip.valueAt(point);
  if (Math.abs(value - grip.value) <= 1e-9 * Math.max(1, Math.abs(grip.value))) return { values: {}, fits: [] };
  if (!fits) return { values: grip.put(toFinest(value, grip.quantity, units), point), fits: [] };
  const onSheet = (at: number) => handle.sight.onSheet(grip.pointFor(at));
  const here = onSheet(value);
  const off = (at: number) => {
    const there = onSheet(at);
    return Math.hypot(there.x - here.x, there.y - here.y);
  };
  const fit = nearest(fits.size, (one) => off(one.value));
  if (fit) return { values: fit.values ?? grip.put(fit.value, point), fits: [fit] };
  return { values: grip.put(roundSize(value, grip, units, off), point), fits: [] };
}

/** A round size; an angle goes to a multiple of fifteen degrees or of five when one is near. */
function roundSize(value: number, { quantity }: SizeGrip, units: "mm" | "inch", off: (value: number) => number): number {
  const step = snapStep(quantity, units, off(value + 1));
  if (quantity === "length") return toStep(value, step);
  const rounder = [15, 5].map((angle) => toStep(value, angle)).find((angle, i) => off(angle) < REACH / (i + 1) && Math.abs(angle - value) < 2 / (i + 1));
  return rounder ?? toStep(value, step);
}

function nearest(fits: readonly Fit[], off: (fit: Fit) => number): Fit | undefined {
  return fits
    .map((fit) => ({ fit, distance: off(fit) }))
    .filter(({ distance }) => distance < REACH)
    .sort((a, b) => a.distance - b.distance)[0]?.fit;
}
