// Items of a drawing as entities, nothing twice: lines as they are asked for, pricks as points, words as text.

import type { Vec2 } from "../../core/index";
import { layerOf } from "../../drawing/blank/cutLayers";
import type { ArrowheadItem, CircleItem, Item, PathItem, TextItem } from "../../drawing/display";
import { type Entity, type EntityOptions, NOTHING, place3 } from "./entity";
import { layerName } from "./layerTable";
import { pathEntities } from "./pathEntities";
import { plainText } from "./plainText";

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

/** The same for things that lie on each other, a line also when drawn backwards. */
function keyOf({ kind, layer, tags }: Entity): string {
  const numbers = tags.map(([code, value]) => (typeof value === "number" ? `${code}:${Math.round(value / NOTHING)}` : `${code}:${value}`));
  if (kind !== "LINE") return [kind, layer, ...numbers].join(" ");
  const ends = [numbers.slice(1, 3), numbers.slice(4, 6)].map((end) => end.map((one) => one.replace(/^\d+:/, "")).join());
  return [kind, ...ends.sort()].join(" ");
}
