// Items of a drawing as entities: contours as closed polylines with bulges, single lines and arcs as such, pricks as points.

import { type Arc, type Line, type Segment, type Vec2, arcSweep, arcsOf, segmentPoint } from "../../core/index";
import { layerOf } from "../../drawing/blank/cutLayers";
import type { ArrowheadItem, CircleItem, Item, PathItem, TextItem } from "../../drawing/display";
import { layerName } from "./layerTable";
import { plainText } from "./plainText";
import type { Tag } from "./tag";

export interface EntityOptions {
  /** Curves become arcs within so many mm. */
  readonly tolerance: number;
  /** File units in a mm. */
  readonly scale: number;
}

/** An entity without its handle: kind, tags of its own. */
export interface Entity {
  readonly kind: string;
  readonly layer: string;
  readonly tags: readonly Tag[];
}

/** Shorter segments, mm, are left out; things nearer than this to each other are one. */
const NOTHING = 1e-6;

/** Half the width of an arrowhead over its length: about 15 degrees in all. */
const ARROW = Math.tan((7.5 * Math.PI) / 180);

/** The entities of the items; none without length, none twice. */
export function entitiesOf(items: readonly Item[], options: EntityOptions): Entity[] {
  const seen = new Set<string>();
  return items.flatMap((item) => entitiesOfItem(item, options)).filter((entity) => {
    const key = keyOf(entity);
    return !seen.has(key) && seen.add(key);
  });
}

function entitiesOfItem(item: Item, options: EntityOptions): Entity[] {
  switch (item.kind) {
    case "path":
      return pathEntities(item, options);
    case "circle":
      return [circleEntity(item, options)];
    case "arrowhead":
      return pathEntities(arrowStrokes(item), options);
    case "text":
      return [textEntity(item, options)];
    case "surface":
    case "group":
      return [];
  }
}

function pathEntities({ pen, segments, closed }: PathItem, { tolerance, scale }: EntityOptions): Entity[] {
  const layer = layerName(layerOf(pen));
  const chain = withoutNothing(segments.flatMap((segment) => arcsOf(segment, tolerance)).flatMap(halved), closed);
  const [first] = chain;
  if (!first) return [];
  if (chain.length === 1 && !closed) return [{ ...(first.kind === "line" ? lineEntity(first, scale) : arcEntity(first, scale)), layer }];
  const ends = closed ? chain : [...chain, null];
  const corners = ends.flatMap((segment): Tag[] => {
    const at = segment?.from ?? chain.at(-1)?.to ?? first.from;
    const bulge = segment?.kind === "arc" ? Math.tan(arcSweep(segment).sweep / 4) : 0;
    return [...place(10, at, scale), ...(bulge === 0 ? [] : [[42, bulge] as const])];
  });
  return [{ kind: "LWPOLYLINE", layer, tags: [[100, "AcDbPolyline"], [90, ends.length], [70, closed ? 1 : 0], ...corners] }];
}

/** An arc over half a turn in two halves: some readers take its bulge wrongly. */
function halved(segment: Line | Arc): (Line | Arc)[] {
  if (segment.kind === "line" || Math.abs(arcSweep(segment).sweep) <= Math.PI + 1e-9) return [segment];
  const middle = segmentPoint(segment, 0.5);
  return [{ ...segment, to: middle }, { ...segment, from: middle }];
}

/** The chain without segments of no length, still joined end to end. */
function withoutNothing(chain: readonly (Line | Arc)[], closed: boolean): (Line | Arc)[] {
  const kept = chain.filter(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) > NOTHING);
  return kept.map((segment, i) => {
    const before = kept[i - 1] ?? (closed ? kept.at(-1) : undefined);
    return before ? { ...segment, from: before.to } : segment;
  });
}

function lineEntity({ from, to }: Segment, scale: number): Omit<Entity, "layer"> {
  return { kind: "LINE", tags: [[100, "AcDbLine"], ...place3(10, from, scale), ...place3(11, to, scale)] };
}

/** Always anticlockwise from its first angle to its second. */
function arcEntity(arc: Arc, scale: number): Omit<Entity, "layer"> {
  const { start, sweep, radius } = arcSweep(arc);
  const [low, high] = [start, start + sweep].sort((a, b) => a - b);
  const degrees = (angle: number) => (((angle * 180) / Math.PI) % 360 + 360) % 360;
  return {
    kind: "ARC",
    tags: [[100, "AcDbCircle"], ...place3(10, arc.centre, scale), [40, radius * scale], [100, "AcDbArc"], [50, degrees(low ?? 0)], [51, degrees(high ?? 0)]],
  };
}

function circleEntity({ pen, centre, radius }: CircleItem, { scale }: EntityOptions): Entity {
  const layer = layerName(layerOf(pen));
  if (pen === "prick point") return { kind: "POINT", layer, tags: [[100, "AcDbPoint"], ...place3(10, centre, scale)] };
  return { kind: "CIRCLE", layer, tags: [[100, "AcDbCircle"], ...place3(10, centre, scale), [40, radius * scale]] };
}

/** The two edges of an arrowhead. */
function arrowStrokes({ pen, tip, direction, length }: ArrowheadItem): PathItem {
  const corner = (side: number): Vec2 => ({
    x: tip.x - length * (Math.cos(direction) + side * ARROW * Math.sin(direction)), y: tip.y - length * (Math.sin(direction) - side * ARROW * Math.cos(direction)),
  });
  return { kind: "path", pen, closed: false, segments: [{ kind: "line", from: corner(1), to: tip }, { kind: "line", from: tip, to: corner(-1) }] };
}

function textEntity({ pen, at, text, height, align, turn }: TextItem, { scale }: EntityOptions): Entity {
  const justified = { start: 0, middle: 1, end: 2 }[align];
  return {
    kind: "TEXT", layer: layerName(layerOf(pen)),
    tags: [
      [100, "AcDbText"], ...place3(10, at, scale), [40, height * scale], [1, plainText(text)], [50, (turn * 180) / Math.PI], [72, justified],
      ...(justified === 0 ? [] : place3(11, at, scale)), [100, "AcDbText"],
    ],
  };
}

function place(code: number, { x, y }: Vec2, scale: number): Tag[] {
  return [[code, x * scale], [code + 10, y * scale]];
}

function place3(code: number, at: Vec2, scale: number): Tag[] {
  return [...place(code, at, scale), [code + 20, 0]];
}

/** The same for things that lie on each other, a line also when drawn backwards. */
function keyOf({ kind, layer, tags }: Entity): string {
  const numbers = tags.map(([code, value]) => (typeof value === "number" ? `${code}:${Math.round(value / NOTHING)}` : `${code}:${value}`));
  if (kind !== "LINE") return [kind, layer, ...numbers].join(" ");
  const ends = [numbers.slice(1, 3), numbers.slice(4, 6)].map((end) => end.map((one) => one.replace(/^\d+:/, "")).join());
  return [kind, ...ends.sort()].join(" ");
}
