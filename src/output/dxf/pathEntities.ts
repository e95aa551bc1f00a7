// A line of the drawing as entities: one polyline with bulges, or a chain of lines, arcs and splines that meet end to end.

import { type Arc, type Cubic, type Line, type Segment, arcSweep, arcsOf, segmentPoint } from "../../core/index";
import { layerOf } from "../../drawing/blank/cutLayers";
import type { PathItem } from "../../drawing/display";
import { type Entity, type EntityOptions, NOTHING, place, place3 } from "./entity";
import { layerName } from "./layerTable";
import { splineTags } from "./splineTags";
import type { Tag } from "./tag";

/** The entities of one line; none when it has no length. */
export function pathEntities({ pen, segments, closed }: PathItem, options: EntityOptions): Entity[] {
  const layer = layerName(layerOf(pen));
  const { curves, tolerance, scale } = options;
  if (curves === "splines" && segments.some(({ kind }) => kind === "cubic")) return chainOf(withoutNothing(segments, closed), layer, scale);
  const chain = withoutNothing(segments.flatMap((segment) => arcsOf(segment, tolerance)).flatMap(halved), closed);
  const [first] = chain;
  if (!first) return [];
  return chain.length === 1 && !closed ? [simpleEntity(first, layer, scale)] : [polyline(chain, closed, layer, scale)];
}

/** Lines and arcs each by itself, neighbouring cubics as one spline. */
function chainOf(chain: readonly Segment[], layer: string, scale: number): Entity[] {
  const runs: (Line | Arc | Cubic[])[] = [];
  for (const segment of chain) {
    const last = runs.at(-1);
    if (segment.kind !== "cubic") runs.push(segment);
    else if (Array.isArray(last)) last.push(segment);
    else runs.push([segment]);
  }
  return runs.map((run): Entity => (Array.isArray(run) ? { kind: "SPLINE", layer, tags: splineTags(run, scale) } : simpleEntity(run, layer, scale)));
}

function polyline(chain: readonly (Line | Arc)[], closed: boolean, layer: string, scale: number): Entity {
  const end = chain.at(-1)?.to;
  const corners = chain.flatMap((segment): Tag[] => {
    const bulge = segment.kind === "arc" ? Math.tan(arcSweep(segment).sweep / 4) : 0;
    return [...place(10, segment.from, scale), ...(bulge === 0 ? [] : [[42, bulge] as const])];
  });
  const last = closed || !end ? [] : place(10, end, scale);
  return { kind: "LWPOLYLINE", layer, tags: [[100, "AcDbPolyline"], [90, chain.length + (closed ? 0 : 1)], [70, closed ? 1 : 0], ...corners, ...last] };
}

/** An arc over half a turn in two halves: some readers take its bulge wrongly. */
function halved(segment: Line | Arc): (Line | Arc)[] {
  if (segment.kind === "line" || Math.abs(arcSweep(segment).sweep) <= Math.PI + 1e-9) return [segment];
  const middle = segmentPoint(segment, 0.5);
  return [{ ...segment, to: middle }, { ...segment, from: middle }];
}

/** The chain without segments of no length, still joined end to end. */
function withoutNothing<S extends Segment>(chain: readonly S[], closed: boolean): S[] {
  const kept = chain.filter(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) > NOTHING);
  return kept.map((segment, i) => {
    const before = kept[i - 1] ?? (closed ? kept.at(-1) : undefined);
    return before ? { ...segment, from: before.to } : segment;
  });
}

function simpleEntity(segment: Line | Arc, layer: string, scale: number): Entity {
  if (segment.kind === "arc") return { kind: "ARC", layer, tags: arcTags(segment, scale) };
  return { kind: "LINE", layer, tags: [[100, "AcDbLine"], ...place3(10, segment.from, scale), ...place3(11, segment.to, scale)] };
}

/** Always anticlockwise from its first angle to its second. */
function arcTags(arc: Arc, scale: number): Tag[] {
  const { start, sweep, radius } = arcSweep(arc);
  const [low, high] = [start, start + sweep].sort((a, b) => a - b);
  const degrees = (angle: number) => (((angle * 180) / Math.PI) % 360 + 360) % 360;
  return [[100, "AcDbCircle"], ...place3(10, arc.centre, scale), [40, radius * scale], [100, "AcDbArc"], [50, degrees(low ?? 0)], [51, degrees(high ?? 0)]];
}
