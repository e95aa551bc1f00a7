// A pattern cut up into overlapping windows: laid so that the fewest of them show anything.

import { boundsOfItem } from "../bounds";
import { type Box, growBox } from "../box";
import type { Item } from "../display";
import { cutLettering } from "./cutLettering";
import { type Coverage, coverageOf } from "./coverage";
import type { Tiled } from "./tiled";

export interface Tile {
  /** Row letter from the top, column number from the left. */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** What it shows, in the pattern's coordinates. */
  readonly window: Box;
}

/** mm. */
const OFF_MIDDLE = 3;

/** The places tried for the first window, in each direction. */
const TRIES = 32;

/** Further places tried among those that take no window more. */
const FINE = 24;

/** A trim line keeps off a straight line along it by this much, mm; if it can, by so much that the neighbour's name stands between them. */
const BESIDE = 1.5, NAMED = 5.5;

/**
 * Windows of the given size (mm) over `bounds`, `overlap` shared with each neighbour; those that would be blank are left out. The
 * first is put where the fewest are left, of equal ones where trim lines run through the least lettering and along the fewest lines, then where they leave most names room beside
 * lines, then where the pattern lies most evenly. An overlap of half a window or more is refused.
 * @throws RangeError for a window that is no larger than twice the overlap.
 */
export function tilesOver(tiled: Tiled, width: number, height: number, overlap: number): Tile[] {
  if (!(width > 2 * overlap && height > 2 * overlap)) throw new RangeError(`invalid window: ${width} × ${height} with an overlap of ${overlap}`);
  const coverage = coverageOf(tiled);
  const across = tiled.bounds.right - tiled.bounds.left, up = tiled.bounds.top - tiled.bounds.bottom;
  const grid = { bounds: tiled.bounds, width, height, overlap, coverage };
  const even = { left: evenOffset(across, width, overlap), top: evenOffset(up, height, overlap) };
  const { x, y } = spansOf(tiled.art);
  const placed = (at: number, from: number, window: number, { cut, near }: Spans) => {
    const trims = { first: from - at, step: window - overlap, overlap };
    return { at, cut: cutLettering(cut, trims), near: cutLettering(near, trims) };
  };
  const lefts = offsets(across, width, overlap).map((at) => placed(at, tiled.bounds.left, width, x));
  const tops = offsets(up, height, overlap).map((at) => placed(at, -tiled.bounds.top, height, y));
  let best: Laid | null = null;
  for (const left of lefts) {
    for (const top of tops) {
      const uneven = Math.abs(left.at - even.left) + Math.abs(top.at - even.top);
      const laid = { tiles: windowsFrom(grid, left.at, top.at), cut: left.cut + top.cut, near: left.near + top.near, uneven };
      if (!best || isBetter(laid, best)) best = laid;
    }
  }
  return named(best?.tiles ?? []);
}

/** Stretches in mm where a trim line would run through lettering or along a straight line, and where so near one that a name would stand on it. */
interface Spans {
  readonly cut: readonly (readonly [number, number])[];
  readonly near: readonly (readonly [number, number])[];
}

/** For an upright (x) and a level trim line (y, downwards). */
function spansOf(art: readonly Item[]): Record<"x" | "y", Spans> {
  const boxes = (kind: Item["kind"]) => art.filter((item) => item.kind === kind).map(boundsOfItem);
  const letters = boxes("text"), lines = boxes("path");
  const uprights = lines.filter(({ left, right }) => right - left <= BESIDE), levels = lines.filter(({ bottom, top }) => top - bottom <= BESIDE);
  const x = ({ left, right }: Box) => [left, right] as const, y = ({ bottom, top }: Box) => [-top, -bottom] as const;
  const grown = (by: number) => (box: Box) => growBox(box, by);
  return {
    x: { cut: [...letters, ...uprights.map(grown(BESIDE))].map(x), near: uprights.map(grown(NAMED)).map(x) },
    y: { cut: [...letters, ...levels.map(grown(BESIDE))].map(y), near: levels.map(grown(NAMED)).map(y) },
  };
}

/** How many windows in a row or column cover a length (mm). */
export function windowsAlong(length: number, window: number, overlap: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (window - overlap) - 1e-9));
}

interface Window {
  readonly column: number;
  readonly row: number;
  readonly window: Box;
}

interface Laid {
  readonly tiles: readonly Window[];
  /** Letterings a trim line runs through. */
  readonly cut: number;
  /** Lines a trim line runs so near along that a name would stand on one. */
  readonly near: number;
  readonly uneven: number;
}

function isBetter(a: Laid, b: Laid): boolean {
  if (a.tiles.length !== b.tiles.length) return a.tiles.length < b.tiles.length;
  if (a.cut !== b.cut) return a.cut < b.cut;
  return a.near !== b.near ? a.near < b.near : a.uneven < b.uneven - 1e-9;
}

interface Grid {
  readonly bounds: Box;
  readonly width: number;
  readonly height: number;
  readonly overlap: number;
  readonly coverage: Coverage;
}

/** How far before the pattern the first window may begin, mm: evenly, or at any part of a step. */
function offsets(length: number, window: number, overlap: number): number[] {
  const spare = spareOf(length, window, overlap);
  return [
    evenOffset(length, window, overlap), ...Array.from({ length: TRIES }, (_, i) => (i * (window - overlap)) / TRIES),
    ...Array.from({ length: FINE }, (_, i) => (i * spare) / FINE),
  ];
}

/** What a row of the fewest windows has over. */
function spareOf(length: number, window: number, overlap: number): number {
  return windowsAlong(length, window, overlap) * (window - overlap) + overlap - length;
}

/** What spreads the spare room evenly, but not quite: no trim line is to fall on the middle of the pattern. */
function evenOffset(length: number, window: number, overlap: number): number {
  return Math.max(0, spareOf(length, window, overlap) / 2 - OFF_MIDDLE);
}

function windowsFrom({ bounds, width, height, overlap, coverage }: Grid, left: number, top: number): Window[] {
  const x0 = bounds.left - left, y0 = bounds.top + top;
  const columns = windowsAlong(bounds.right - x0, width, overlap), rows = windowsAlong(y0 - bounds.bottom, height, overlap);
  const found: Window[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const x = x0 + column * (width - overlap), y = y0 - row * (height - overlap);
      const window = { left: x, right: x + width, bottom: y - height, top: y };
      if (coverage.isCovered(ownPart(window, overlap, column > 0, row > 0, column < columns - 1, row < rows - 1))) found.push({ column, row, window });
    }
  }
  return found;
}

/** What of a window its neighbours do not show: up to the trim lines. */
function ownPart({ left, right, bottom, top }: Box, overlap: number, hasLeft: boolean, hasAbove: boolean, hasRight: boolean, hasBelow: boolean): Box {
  const half = overlap / 2;
  return {
    left: left + (hasLeft ? half : 0), right: right - (hasRight ? half : 0), bottom: bottom + (hasBelow ? half : 0), top: top - (hasAbove ? half : 0),
  };
}

/** Rows and columns counted from the first that has a window. */
function named(windows: readonly Window[]): Tile[] {
  const firstColumn = Math.min(...windows.map(({ column }) => column)), firstRow = Math.min(...windows.map(({ row }) => row));
  return windows.map(({ column, row, window }) => ({
    name: `${rowName(row - firstRow)}${column - firstColumn + 1}`, column: column - firstColumn, row: row - firstRow, window,
  }));
}

/** A … Z, AA, AB … */
function rowName(row: number): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return row < 26 ? letter : rowName(Math.floor(row / 26) - 1) + letter;
}
