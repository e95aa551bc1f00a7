// On which paper, at which scale and where does the board drawing of a piece stand? A roll is cut as long as the drawing needs.

import type { Vec2 } from "../../core/index";
import type { Arrangement } from "../board/arrange";
import { type Board, board } from "../board/board";
import { type Box, growBox, moveBox } from "../box";
import { patternAllowances } from "../pattern/patternAllowances";
import { type Furniture, furnished, furnitureOf } from "./boardFurniture";
import { boardCells, longestBoardHeading } from "./boardCells";
import { clearMoves } from "./clearMoves";
import { type Layout, layoutsFor } from "./layouts";
import { type PaperField, paperField } from "./paperField";
import { SCALES } from "./scales";
import { OWN_SIZE } from "./setup";
import { type SheetContext, bandsOf } from "./sheetContext";
import { titleBlock } from "./titleBlock";

/** The width of a title block (ISO 7200), mm; the ruler up the left side keeps more than the 20 mm that ISO 5457 leaves for filing. */
const BLOCK = 180;

/** Round the drawing, and the step in which a roll is cut longer, mm. */
const AIR = 5, STEP = 5;

/** Unless a scale is asked for, it is that which fits a piece of the roll as long as its width times this; cut off is no more than the second. */
const LONG = 1.5, LONGEST = 3;

export interface BoardLayout {
  readonly layout: Layout;
  readonly field: PaperField;
  readonly scale: number;
  readonly board: Board;
  /** Brings the board to its place in the frame. */
  readonly move: Vec2;
  readonly frame: Box;
  /** Where the title block stands. */
  readonly corner: Box;
  /** What views, pattern and title block take. */
  readonly taken: readonly Box[];
  /** Whether description and table find room beside it. */
  readonly furnished: boolean;
}

/**
 * The largest usual scale over the layouts of the paper, or the scale asked for; null when that does not fit. Of papers in a family, the
 * second, which drawings are usually made on.
 */
export function boardLayout(context: SheetContext, piece: number): BoardLayout | null {
  const { setup: { paper } } = context;
  const boards = boardsOf(context, piece);
  const longest = paper.kind === "roll" ? (context.scale === null ? LONGEST * paper.width : OWN_SIZE.max) : 0;
  const length = paper.kind === "roll" && context.scale === null ? LONG * paper.width : longest;
  const all = layoutsFor(context.setup, { width: length, height: length });
  const second = paper.kind === "smallest" ? [...new Set(all.map((one) => one.paper.name))][1] : undefined;
  const layouts = second === undefined ? all : all.filter((one) => one.paper.name === second);
  const found = layouts.flatMap((layout) => drawnOn(context, piece, layout, boards, context.scale) ?? []);
  const [best] = [...found].sort((a, b) => b.scale - a.scale || Number(b.furnished) - Number(a.furnished));
  if (!best || paper.kind !== "roll") return best ?? null;
  const cut = found.filter(({ scale }) => scale === best.scale).map((one) => cutShort(context, piece, one, boards, longest));
  return cut.reduce((shortest, one) => (one.layout.paper.height < shortest.layout.paper.height ? one : shortest));
}

/** The same drawing on the shortest piece of the roll that takes it with all that stands beside it. */
function cutShort(context: SheetContext, piece: number, long: BoardLayout, boards: Boards, longest: number): BoardLayout {
  const { layout: { landscape }, scale } = long;
  for (let length = STEP; length < longest; length += STEP) {
    const layout = layoutsFor(context.setup, { width: length, height: length }).find((one) => one.landscape === landscape);
    const drawn = layout && drawnOn(context, piece, layout, boards, scale);
    if (drawn?.furnished) return drawn;
  }
  return long;
}

/** Of the ways the drawing can stand at the largest scale, the first that leaves room for all that stands beside it, else the first. */
function drawnOn(context: SheetContext, piece: number, layout: Layout, boards: Boards, asked: number | null): BoardLayout | null {
  const field = paperField(layout.paper, layout.landscape, context.setup);
  const { room: frame } = bandsOf(context, field, layout.paper, longestBoardHeading(context));
  const width = Math.min(BLOCK, frame.right - frame.left);
  const height = titleBlock(boardCells(context, piece, asked ?? 1 / 1000), width).height;
  const corner: Box = { left: frame.right - width, right: frame.right, bottom: frame.bottom, top: frame.bottom + height };
  const window = { width: frame.right - frame.left - 2 * AIR, height: frame.top - frame.bottom - 2 * AIR };
  if (!(window.height > height)) return null;
  for (const scale of asked === null ? SCALES.filter((one) => one <= 1.05 * boards.largest(window)) : [asked]) {
    const ways = (["projection", "beside", "under"] as const).flatMap((arrangement) => {
      const made = boards.at(scale, arrangement);
      const blocks = Object.values(made.blocks).map(({ bounds }) => bounds);
      return clearMoves(blocks, made.bounds, growBox(frame, -AIR), corner, AIR).map((move): BoardLayout => {
        const taken = [...blocks.map((box) => growBox(moveBox(box, move), AIR / 2)), corner];
        return { layout, field, scale, board: made, move, frame, corner, taken, furnished: furnished(boards.furniture, growBox(frame, -AIR / 2), taken).left.length === 0 };
      });
    });
    const found = ways.find((one) => one.furnished) ?? ways[0];
    if (found) return found;
  }
  return null;
}

interface Window {
  readonly width: number;
  readonly height: number;
}

/** Boards of one piece, each drawn once, and what is to stand beside them. */
interface Boards {
  /** The scale at which the drawing fills a window, whatever its arrangement. */
  readonly largest: (window: Window) => number;
  readonly at: (scale: number, arrangement: Arrangement) => Board;
  readonly furniture: readonly Furniture[];
}

function boardsOf(context: SheetContext, piece: number): Boards {
  const { development, figures, words } = context;
  const known = new Map<string, Board>();
  const options = { piece, figures, words, allowances: patternAllowances(development, figures) };
  const at = (scale: number, arrangement: Arrangement): Board => {
    const name = `${scale} ${arrangement}`;
    const made = known.get(name) ?? board(development, { ...options, width: 1, height: 1, at: { scale, arrangement } });
    known.set(name, made);
    return made;
  };
  return { at, furniture: furnitureOf(context, piece), largest: (window) => board(development, { ...options, ...window }).scale };
}
