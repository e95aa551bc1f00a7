// A pictorial view of a piece, flat, rolled up or anywhere between: the far wall, then the near one over it, each with its surface,
// its edges and its elements. Hidden edges are not drawn, as is the habit in pictorial views.

import { type Vec2, keptAt } from "../../core/index";
import { boxOfPoints } from "../box";
import { unionOf } from "../view/contour";
import type { Item, PathItem, Ref, SurfaceItem } from "../display";
import type { PenName } from "../pens";
import { clippedChain, clippedLoop } from "./pictorialClip";
import type { PictorialElement, PictorialSheet } from "./pictorialSheet";
import { type Sight, pictured, sightAxes } from "./pictorialSight";
import { type Wall, wallsOf } from "./pictorialWalls";
import { stroke } from "../strokes";
import { stepFor } from "../thinning";

export interface PictorialOptions {
  /** How far the sheet is rolled up: 0 flat, 1 the finished pipe. */
  readonly fraction: number;
  readonly sight: Sight;
  /** The window to fill, sheet mm. */
  readonly width: number;
  readonly height: number;
  /** Index of the station in hand. */
  readonly station?: number | null;
  /** Whether this stage of the rolling alone fills the window. */
  readonly alone?: boolean;
}

export interface Pictorial {
  readonly items: readonly Item[];
  /** Sheet mm a model mm before foreshortening. */
  readonly scale: number;
  /** From far to near: what a pointer can meet. */
  readonly walls: readonly PictorialWall[];
  /** How one mm along an element runs on the sheet. */
  readonly axis: Vec2;
}

export interface PictorialWall {
  readonly side: "inside" | "outside";
  readonly loops: readonly (readonly Vec2[])[];
  /** Where the elements pass the height 0. */
  readonly feet: readonly { readonly station: number; readonly foot: Vec2 }[];
}

/** Paper left free round the picture, sheet mm. */
const MARGIN = 1;

/** Elements stand no closer than this along the girth, sheet mm. */
const LEAST_SPACE = 1.6;

/**
 * The view of a sheet, in the middle of its window. The scale is that at which every stage of the rolling fits in the isometric view, so
 * that lengths stay as they are while it rolls; less only where the sheet, turned otherwise, would not fit, and more for a stage alone.
 * @throws RangeError for a window without room or a fraction outside [0, 1].
 */
export function pictorial(sheet: PictorialSheet, options: PictorialOptions): Pictorial {
  const { fraction, sight, width, height, station = null, alone = false } = options;
  if (!(width > 2 * MARGIN && height > 2 * MARGIN)) throw new RangeError(`invalid window: ${width} × ${height}`);
  const { piece } = sheet;
  const room = alone ? { width: 0, height: 0 } : sheet.room;
  const axes = sightAxes(piece, sight, fraction);
  const { left, right, bottom, top } = boxOfPoints(sheet.loops.flatMap((loop) => loop.map((point) => pictured(piece, axes, point, fraction))));
  const scale = Math.min((width - 2 * MARGIN) / Math.max(room.width, right - left), (height - 2 * MARGIN) / Math.max(room.height, top - bottom));
  const place = (point: Vec2): Vec2 => {
    const { x, y } = pictured(piece, axes, point, fraction);
    return { x: width / 2 + scale * (x - (left + right) / 2), y: height / 2 + scale * (y - (bottom + top) / 2) };
  };
  const { walls, contours } = wallsOf(piece.form, piece.pattern.towards, axes.viewer, fraction);
  const drawing: Drawing = { sheet, place, closed: fraction === 1, every: thinning(sheet, scale), station };
  const drawn = walls.map((wall) => wallOf(drawing, wall));
  return {
    scale, walls: drawn, axis: { x: scale * axes.right.z, y: scale * axes.up.z },
    items: [...drawn.flatMap(({ items }) => items), ...contours.flatMap((girth) => contour(drawing, girth)), ...hiddenInHand(drawing, walls)],
  };
}

interface Drawing {
  readonly sheet: PictorialSheet;
  readonly place: (point: Vec2) => Vec2;
  /** Whether the seam is closed. */
  readonly closed: boolean;
  /** Every how manyth even division is drawn. */
  readonly every: number;
  readonly station: number | null;
}

function thinning({ piece, elements }: PictorialSheet, scale: number): number {
  const divisions = elements.filter(({ division }) => division !== null).length;
  return stepFor((piece.form.girth * scale) / divisions, LEAST_SPACE);
}

function wallOf(drawing: Drawing, wall: Wall): PictorialWall & { items: readonly Item[] } {
  const { sheet, place, station } = drawing;
  const loops = sheet.loops.map((loop) => clippedLoop(loop, wall).map(place)).filter((loop) => loop.length > 2);
  const within = sheet.elements.filter(({ girth }) => girth >= wall.from && girth <= wall.to);
  const surface: SurfaceItem = { kind: "surface", side: wall.side, loops };
  return {
    side: wall.side, loops, feet: within.map(({ girth, station: index }) => ({ station: index, foot: place({ x: girth, y: 0 }) })),
    items: [
      surface,
      ...within.filter((element) => isDrawn(drawing, element)).flatMap((element) => elementLines(drawing, element.division === null ? "extra station" : "station", element)),
      ...sheet.edges.flatMap(({ points, ref }) => clippedChain(points, wall).map((run) => chain(edgePen(drawing, ref), run.map(place), ref))),
      ...within.filter((element) => element.station === station).flatMap((element) => elementLines(drawing, "station in hand", element)),
    ],
  };
}

/** At the seam the edges themselves are drawn. */
function isDrawn({ sheet: { piece }, every }: Drawing, { station, division }: PictorialElement): boolean {
  return station > 0 && station < piece.stations.length - 1 && (division === null || division % every === 0);
}

/** A closed seam is a line on the pipe; before that its two edges are edges like others. */
function edgePen({ closed }: Drawing, { clause }: Ref): PenName {
  return closed && clause === "seam" ? "seam" : "visible edge";
}

function elementLines({ place }: Drawing, pen: PenName, { girth, kept, station }: PictorialElement): PathItem[] {
  return kept.map(({ from, to }) => stroke(pen, place({ x: girth, y: from }), place({ x: girth, y: to }), { clause: "stations", station }));
}

function chain(pen: PenName, points: readonly Vec2[], ref: Ref): PathItem {
  return { kind: "path", pen, closed: false, ref, segments: linesThrough(points) };
}

function linesThrough(points: readonly Vec2[]): PathItem["segments"] {
  return points.slice(1).map((to, i) => ({ kind: "line", from: points[i] ?? to, to }));
}

/** The element at which the wall turns away, where it is kept: nothing stands in front of it. */
function contour({ sheet: { piece }, place }: Drawing, girth: number): PathItem[] {
  const { before, after } = keptAt(piece, piece.pattern.seam + (piece.pattern.towards * girth) / piece.form.radius);
  return unionOf([...before, ...after]).map(({ from, to }) => stroke("contour", place({ x: girth, y: from }), place({ x: girth, y: to }), { clause: "part" }));
}

/** The station in hand on the far wall, dashed through the near one. */
function hiddenInHand(drawing: Drawing, walls: readonly Wall[]): PathItem[] {
  const element = drawing.sheet.elements.find(({ station }) => station === drawing.station);
  const far = element && walls.some(({ side, from, to }) => side === "inside" && element.girth > from && element.girth < to);
  return far && walls.some(({ side }) => side === "outside") ? elementLines(drawing, "hidden station in hand", element) : [];
}
