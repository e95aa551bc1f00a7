// A ruled block of fields, each with its name small above what it says.

import type { Vec2 } from "../../core/index";
import type { Box } from "../box";
import type { Item } from "../display";
import { LETTERING, textWidth } from "../lettering";
import { polygon, stroke } from "../strokes";
import { shortened, wrapText } from "../wrapText";

/** One field. `wide` gives it a row of its own; `drawn` is drawn, not written, with the middle of its room at a place. */
export interface Cell {
  readonly label: string;
  readonly value: string | readonly string[];
  readonly wide?: true;
  /** Lines it may take; a longer text is shortened. */
  readonly most?: number;
  /** Lines it may take at its height; a longer text is written whole in letters of 3.5 mm. */
  readonly large?: number;
  /** Height of its letters, mm; 3.5 unless given. */
  readonly height?: number;
  /** Height of the letters of its name, mm; 2.5 unless given. */
  readonly labelHeight?: number;
  readonly drawn?: { readonly width: number; readonly height: number; readonly items: (middle: Vec2) => readonly Item[] };
}

export interface TitleBlock {
  readonly height: number;
  /** The block with its bottom left corner there. */
  readonly at: (corner: Vec2) => Item[];
}

/** Height of the names of fields, the air round a text, and the pitch of lines over their height, mm. */
const LABEL = 2.5, AIR = 1.5, PITCH = 1.45;

/** No field asks for more than this, mm. */
const WIDEST = 95;

interface Laid {
  readonly cell: Cell;
  readonly left: number;
  readonly width: number;
  readonly lines: readonly string[];
  /** Of its letters, mm. */
  readonly height: number;
}

/** The cells row by row, as many in a row as `width` mm takes. */
export function titleBlock(cells: readonly Cell[], width: number): TitleBlock {
  return blockOf(rowsOf(cells, width).map((row) => spread(row, width)), width);
}

/** The same in as many blocks as it takes that none is higher than `most` mm; a row that is higher alone stands alone. */
export function titleBlocks(cells: readonly Cell[], width: number, most: number): TitleBlock[] {
  const blocks: Laid[][][] = [];
  let room = 0;
  for (const row of rowsOf(cells, width).map((own) => spread(own, width))) {
    const height = heightOfRow(row);
    if (height > room) {
      blocks.push([]);
      room = most;
    }
    blocks.at(-1)?.push(row);
    room -= height;
  }
  return blocks.map((rows) => blockOf(rows, width));
}

function blockOf(rows: readonly (readonly Laid[])[], width: number): TitleBlock {
  const heights = rows.map(heightOfRow);
  const height = heights.reduce((sum, one) => sum + one, 0);
  const at = ({ x, y }: Vec2): Item[] => {
    const tops = heights.map((_, i) => y + height - heights.slice(0, i).reduce((sum, one) => sum + one, 0));
    return [
      polygon("frame", corners({ left: x, right: x + width, bottom: y, top: y + height })),
      ...rows.flatMap((row, i) => {
        const top = tops[i] ?? y, bottom = top - (heights[i] ?? 0);
        const under = i < rows.length - 1 ? [stroke("ruler", { x, y: bottom }, { x: x + width, y: bottom })] : [];
        return [...under, ...row.flatMap((laid) => cellItems(laid, x, top, bottom))];
      }),
    ];
  };
  return { height, at };
}

/** Corners of a box, anticlockwise. */
export function corners({ left, right, bottom, top }: Box): Vec2[] {
  return [{ x: left, y: bottom }, { x: right, y: bottom }, { x: right, y: top }, { x: left, y: top }];
}

function linesOf({ value }: Cell): readonly string[] {
  return typeof value === "string" ? [value] : value;
}

/** The room a cell asks for, mm. */
function asked(cell: Cell, width: number): number {
  if (cell.wide) return width;
  const needed = Math.max(textWidth(cell.label, labelOf(cell)), cell.drawn?.width ?? 0, ...linesOf(cell).map((line) => textWidth(line, cell.height ?? LETTERING)));
  return Math.min(width, WIDEST, needed + 2 * AIR);
}

function rowsOf(cells: readonly Cell[], width: number): Cell[][] {
  const rows: Cell[][] = [];
  let room = 0;
  for (const cell of cells) {
    const needed = asked(cell, width);
    if (needed > room || rows.length === 0) {
      rows.push([]);
      room = width;
    }
    rows.at(-1)?.push(cell);
    room -= needed;
  }
  return rows;
}

/** The cells of one row, what is left over shared by how much each asks for. */
function spread(row: readonly Cell[], width: number): Laid[] {
  const sum = row.reduce((total, cell) => total + asked(cell, width), 0);
  let left = 0;
  return row.map((cell) => {
    const own = (asked(cell, width) * width) / sum;
    const laid = { cell, left, width: own, ...lettered(cell, own - 2 * AIR) };
    left += own;
    return laid;
  });
}

function lettered(cell: Cell, width: number): Pick<Laid, "lines" | "height"> {
  const { height = LETTERING, most = Infinity, large = Infinity, drawn } = cell;
  const wrapped = (size: number) => (drawn ? [] : linesOf(cell).flatMap((line) => wrapText(line, width, size)));
  const all = wrapped(height);
  if (all.length > large) return { lines: wrapped(LETTERING), height: LETTERING };
  return { lines: all.length <= most ? all : [...all.slice(0, most - 1), shortened(all.slice(most - 1).join(" "), width, height)], height };
}

function heightOfRow(row: readonly Laid[]): number {
  return Math.max(...row.map(heightOf));
}

function heightOf({ cell, lines, height }: Laid): number {
  const label = cell.label === "" ? 0 : labelOf(cell) + AIR;
  const body = cell.drawn?.height ?? Math.max(1, lines.length) * height * PITCH;
  return AIR + label + body + AIR / 2;
}

function labelOf({ labelHeight = LABEL }: Cell): number {
  return labelHeight;
}

function cellItems({ cell, left, width, lines, height }: Laid, x: number, top: number, bottom: number): Item[] {
  const letters = (text: string, down: number, size: number): Item => ({
    kind: "text", pen: "lettering", text, height: size, align: "start", turn: 0, at: { x: x + left + AIR, y: top - down },
  });
  const label = cell.label === "" ? 0 : labelOf(cell) + AIR;
  const drawn = cell.drawn?.items({ x: x + left + width / 2, y: (top - label - AIR + bottom) / 2 }) ?? [];
  return [
    ...(left > 0 ? [stroke("ruler", { x: x + left, y: bottom }, { x: x + left, y: top })] : []),
    ...(cell.label === "" ? [] : [letters(cell.label, AIR + labelOf(cell), labelOf(cell))]),
    ...lines.map((line, i) => letters(line, AIR + label + height + i * height * PITCH, height)),
    ...drawn,
  ];
}
