// Where is the paper still free for a figure? Lines as short straight pieces, figures as boxes.

import { type Vec2, flattenSegments } from "../core/index";
import { type Box, EMPTY_BOX, boxesOverlap, growBox, joinBoxes } from "./box";
import { type CellGrid, cellGrid } from "./cellGrid";
import type { Item } from "./display";
import { boundsOfItem } from "./bounds";

/** Distance of the straight pieces from their curve, sheet mm. */
const COARSE = 0.1;

/** From so many straight pieces on they are looked up by their place. */
const MANY = 200;

export interface ClearSpace {
  /** Takes the room of items that have been drawn. */
  take(items: readonly Item[]): void;
  /** Whether a box meets nothing drawn. */
  isFree(box: Box): boolean;
  /** Whether a line among the items runs through a figure or arrowhead that has been drawn. */
  meetsFigures(items: readonly Item[]): boolean;
}

/** An empty sheet; boxes keep `margin` mm from everything taken. */
export function clearSpace(margin: number): ClearSpace {
  const lines: Straight[] = [];
  const boxes: Box[] = [];
  let grid: CellGrid<Straight> | null = null;
  const take = (items: readonly Item[]): void => {
    for (const item of items) {
      if (item.kind === "text" || item.kind === "arrowhead") boxes.push(boundsOfItem(item));
      else for (const piece of piecesOf(item)) {
        lines.push(piece);
        grid?.add(piece, boxOfPiece(piece));
      }
    }
  };
  const meetsFigures = (items: readonly Item[]): boolean =>
    items.flatMap(piecesOf).some(({ from, to }) => boxes.some((box) => crosses(box, from, to)));
  const isFree = (box: Box): boolean => {
    const wide = growBox(box, margin);
    if (boxes.some((other) => boxesOverlap(wide, other))) return false;
    const meets = ({ from, to }: Straight) => crosses(wide, from, to);
    if (lines.length < MANY) return !lines.some(meets);
    grid ??= gridOf(lines);
    return !grid.some(wide, meets);
  };
  return { take, isFree, meetsFigures };
}

interface Straight {
  readonly from: Vec2;
  readonly to: Vec2;
}

function gridOf(lines: readonly Straight[]): CellGrid<Straight> {
  const boxes = lines.map(boxOfPiece);
  const grid = cellGrid<Straight>(boxes.reduce(joinBoxes, EMPTY_BOX));
  lines.forEach((piece, i) => grid.add(piece, boxes[i] ?? EMPTY_BOX));
  return grid;
}

function boxOfPiece({ from, to }: Straight): Box {
  return { left: Math.min(from.x, to.x), right: Math.max(from.x, to.x), bottom: Math.min(from.y, to.y), top: Math.max(from.y, to.y) };
}

function piecesOf(item: Item): Straight[] {
  return pointsOf(item).flatMap((to, i, points) => {
    const from = points[i - 1];
    return from ? [{ from, to }] : [];
  });
}

function pointsOf(item: Item): Vec2[] {
  if (item.kind === "path") return flattenSegments(item.segments, COARSE);
  if (item.kind !== "circle") return [];
  const { centre, radius } = item;
  return Array.from({ length: 49 }, (_, i) => {
    const angle = (i * Math.PI) / 24;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

/** Whether the straight piece from a to b has a point inside the box: no line along the box's sides or along the piece parts them. */
function crosses({ left, right, bottom, top }: Box, a: Vec2, b: Vec2): boolean {
  if ((a.x <= left && b.x <= left) || (a.x >= right && b.x >= right)) return false;
  if ((a.y <= bottom && b.y <= bottom) || (a.y >= top && b.y >= top)) return false;
  const dx = b.x - a.x, dy = b.y - a.y;
  if (dx === 0 || dy === 0) return true;
  // How far the corners stand to the left of the piece, at least and at most.
  const middle = dx * ((bottom + top) / 2 - a.y) - dy * ((left + right) / 2 - a.x);
  return Math.abs(middle) < (Math.abs(dx) * (top - bottom) + Math.abs(dy) * (right - left)) / 2;
}
