// The greatest gap between the true edge and the smooth curve, enlarged inside a circle: both lines, the gap in figures, the scale.

import { type Piece, type RuledElement, type SmoothGap, type Vec2, elementAt, flattenSegments, smoothCubics } from "../../core/index";
import { clearSpace } from "../clearSpace";
import type { ArrowheadItem, Item, PathItem, TextItem } from "../display";
import { roundStep } from "../station/girthUnder";
import { LETTERING, textBox } from "../lettering";
import { insideCircle } from "./insideCircle";
import { type Metrics, metricsFor } from "../metrics";
import type { PenName } from "../pens";
import { stroke } from "../strokes";

export interface GapDetail {
  readonly items: readonly Item[];
  /** Of the circle about the origin, mm; the title stands under it. */
  readonly radius: number;
  /** Sheet mm a model mm: 1, 2 or 5 times a power of ten. */
  readonly scale: number;
}

/** Radius in lettering heights, and the parts of it the gap takes at most: the first that leaves room for the figure. */
const ROUND = 5;
const FILLS = [0.75, 0.4, 0.2];

/** Places where the true edge is asked for inside the circle. */
const PLACES = 160;

/** The enlarged detail of one end; `figure` is the gap as it is to be written, `title` says the scale. */
export function gapDetail(
  piece: Piece, end: "top" | "bottom", gap: SmoothGap, { figure, title, lettering = LETTERING }: { figure: string; title: (scale: number) => string; lettering?: number },
): GapDetail {
  const metrics = metricsFor(lettering);
  const radius = ROUND * lettering;
  const width = Math.max(Math.hypot(gap.edge.x - gap.curve.x, gap.edge.y - gap.curve.y), 1e-6);
  const tried = FILLS.map((part) => {
    const scale = roundStep((part * radius) / width);
    const lines = linesAt(piece, end, gap, scale, radius, metrics);
    return { scale, lines, inside: figureInside(figure, lines, radius, metrics) };
  });
  const chosen = tried.find(({ inside }) => inside) ?? tried[0];
  if (!chosen) throw new RangeError("no scale");
  const { scale, lines, inside } = chosen;
  const circle: Item = { kind: "circle", pen: "dimension", centre: { x: 0, y: 0 }, radius };
  const under: TextItem = { ...letters(title(scale), lettering), at: { x: 0, y: -radius - 2 * metrics.gap - lettering } };
  const over: TextItem = { ...letters(figure, lettering), at: { x: 0, y: radius + metrics.gap } };
  return { items: [...lines, circle, under, inside ?? over], radius, scale };
}

/** Both curves and the dimension of the gap about its middle. */
function linesAt(piece: Piece, end: "top" | "bottom", gap: SmoothGap, scale: number, radius: number, metrics: Metrics): Item[] {
  const middle = { x: (gap.edge.x + gap.curve.x) / 2, y: (gap.edge.y + gap.curve.y) / 2 };
  const enlarged = ({ x, y }: Vec2): Vec2 => ({ x: scale * (x - middle.x), y: scale * (y - middle.y) });
  const reach = radius / scale;
  return [
    ...drawn("outline", edgeChains(piece, end, middle.x - reach, middle.x + reach), enlarged, radius),
    ...drawn("smooth curve", curveChains(piece, end, 0.02 / scale), enlarged, radius),
    ...dimension(enlarged(gap.edge), enlarged(gap.curve), metrics),
  ];
}

function drawn(pen: PenName, chains: readonly (readonly Vec2[])[], enlarged: (point: Vec2) => Vec2, radius: number): PathItem[] {
  return chains.flatMap((chain) => insideCircle(chain.map(enlarged), radius)).map((points) => ({
    kind: "path", pen, closed: false, segments: points.slice(1).map((to, i) => ({ kind: "line", from: points[i] ?? to, to })),
  }));
}

/** The true edge between two places of the girth, on both sides of every element: upright where an edge runs along one. */
function edgeChains(piece: Piece, end: "top" | "bottom", from: number, to: number): Vec2[][] {
  const chains: Vec2[][] = [[]];
  for (let i = 0; i <= PLACES; i++) {
    const x = from + ((to - from) * i) / PLACES;
    const element = elementAt(piece, x);
    for (const y of [heightOf(element.before, end), heightOf(element.after, end)]) {
      const last = chains.at(-1);
      if (y === undefined) chains.push([]);
      else if (last?.at(-1)?.x !== x || last.at(-1)?.y !== y) last?.push({ x, y });
    }
  }
  return chains;
}

function heightOf(stretches: RuledElement["before"], end: "top" | "bottom"): number | undefined {
  return end === "top" ? stretches.at(-1)?.to : stretches[0]?.from;
}

/** The smooth curve on the pattern and beyond both seam edges, as it runs on there. */
function curveChains(piece: Piece, end: "top" | "bottom", tolerance: number): Vec2[][] {
  const chains = smoothCubics(piece, end).map((chain) => flattenSegments(chain, tolerance));
  return [-1, 0, 1].flatMap((turns) => chains.map((chain) => chain.map(({ x, y }) => ({ x: x + turns * piece.pattern.girth, y }))));
}

/** A dimension line across the gap, its arrowheads outside where it is narrow. */
function dimension(a: Vec2, b: Vec2, { arrow }: Metrics): Item[] {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const direction = Math.atan2(b.y - a.y, b.x - a.x);
  const inside = length >= 2.5 * arrow;
  const outer = inside ? 0 : 2 * arrow;
  const past = (point: Vec2, by: number): Vec2 => ({ x: point.x + by * Math.cos(direction), y: point.y + by * Math.sin(direction) });
  const head = (tip: Vec2, forward: boolean): ArrowheadItem => ({ kind: "arrowhead", pen: "dimension", tip, direction: direction + (forward ? 0 : Math.PI), length: arrow });
  return [stroke("dimension", past(a, -outer), past(b, outer)), head(a, !inside), head(b, inside)];
}

/** The figure at the free place inside the circle nearest to the gap; null where there is none. */
function figureInside(text: string, lines: readonly Item[], radius: number, { lettering, gap }: Metrics): TextItem | null {
  const space = clearSpace(gap / 2);
  space.take(lines);
  for (let away = lettering; away < radius; away += lettering / 3) {
    for (let i = 0; i < 24; i++) {
      const angle = (i * Math.PI) / 12;
      const figure: TextItem = { ...letters(text, lettering), at: { x: away * Math.cos(angle), y: away * Math.sin(angle) - lettering / 2 } };
      const { left, right, bottom, top } = textBox(figure);
      const inside = [left, right].every((x) => [bottom, top].every((y) => Math.hypot(x, y) < radius - gap));
      if (inside && space.isFree({ left, right, bottom, top })) return figure;
    }
  }
  return null;
}

function letters(text: string, height: number): Omit<TextItem, "at"> {
  return { kind: "text", pen: "lettering", text, height, align: "middle", turn: 0 };
}
