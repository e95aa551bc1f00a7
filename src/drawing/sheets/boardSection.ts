// The board drawing on framed sheets: views and pattern at a usual scale, title block, description and station table where there is room.

import type { Vec2 } from "../../core/index";
import type { Arrangement } from "../board/arrange";
import { type Board, board } from "../board/board";
import { type Box, boxOfPoints, boxesOverlap, growBox, moveBox } from "../box";
import type { Item } from "../display";
import { freeBox } from "../freeBox";
import { LETTERING } from "../lettering";
import { moveItem } from "../moveItem";
import { projectionSymbol } from "../projectionSymbol";
import { polygon } from "../strokes";
import { wrapText } from "../wrapText";
import { type Layout, layoutsFor } from "./layouts";
import type { Page } from "./page";
import { type PaperField, paperField } from "./paperField";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf, footCells } from "./sheetContext";
import { stationTable } from "./stationTable";
import { jobTitle, sheetText } from "./templatePart";
import { type Cell, type TitleBlock, corners, titleBlock } from "./titleBlock";

/** Scales for drawings, paper mm a real mm, largest first (ISO 5455). */
export const SCALES = [10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50, 1 / 100, 1 / 200, 1 / 500, 1 / 1000] as const;

/** The width of a title block (ISO 7200), mm; the ruler up the left side keeps more than the 20 mm that ISO 5457 leaves for filing. */
const BLOCK = 180;

/** Round the drawing, mm, and the pitch of lines of text. */
const AIR = 5, PITCH = 5.5;

/** Longest lines of the description, mm: the first for which there is room. */
const LINES = [120, 90, 150, 180] as const;

interface Drawn {
  readonly layout: Layout;
  readonly field: PaperField;
  readonly scale: number;
  readonly board: Board;
  /** Brings the board to its place in the frame. */
  readonly move: Vec2;
  readonly frame: Box;
  readonly block: TitleBlock;
  /** Where the title block stands. */
  readonly corner: Box;
}

/** One page a piece, each at the largest usual scale that fits, or at the scale asked for; null when that does not fit. */
export function boardSection(context: SheetContext): Section | null {
  const { development: { pieces }, words } = context;
  const drawn = pieces.map((_, i) => bestDrawing(context, i));
  const found = drawn.filter((one) => one !== null);
  const [first] = found;
  if (!first || found.length < pieces.length) return null;
  const { layout: { paper, landscape }, scale } = first;
  return { kind: "board", title: words.document.board, layout: "one", paper: paper.name, landscape, columns: 1, rows: 1, scale, pages: found.map((one, i) => pageOf(context, one, i)) };
}

/** "1:2", "5:1" */
export function scaleText(scale: number): string {
  return scale >= 1 ? `${Number(scale.toFixed(3))}:1` : `1:${Number((1 / scale).toFixed(3))}`;
}

/** The largest scale over the layouts of the paper; of papers in a family, the second, which drawings are usually made on. */
function bestDrawing(context: SheetContext, piece: number): Drawn | null {
  const { setup } = context;
  const all = layoutsFor(setup, { width: 1.5 * rollWidth(context), height: 1.5 * rollWidth(context) });
  const second = setup.paper.kind === "smallest" ? [...new Set(all.map(({ paper }) => paper.name))][1] : undefined;
  const layouts = second === undefined ? all : all.filter(({ paper }) => paper.name === second);
  let best: Drawn | null = null;
  for (const layout of layouts) {
    const drawn = drawing(context, piece, layout);
    if (drawn && (!best || drawn.scale > best.scale)) best = drawn;
  }
  return best;
}

function rollWidth({ setup: { paper } }: SheetContext): number {
  return paper.kind === "roll" ? paper.width : 0;
}

function drawing(context: SheetContext, piece: number, layout: Layout): Drawn | null {
  const field = paperField(layout.paper, layout.landscape, context.setup);
  const { room: frame } = bandsOf(context, field, layout.paper, "");
  const width = Math.min(BLOCK, frame.right - frame.left);
  const blockAt = (scale: number) => titleBlock(cellsOf(context, piece, scale), width);
  const corner: Box = { left: frame.right - width, right: frame.right, bottom: frame.bottom, top: frame.bottom + blockAt(context.scale ?? 1 / 1000).height };
  const window = { width: frame.right - frame.left - 2 * AIR, height: frame.top - frame.bottom - 2 * AIR };
  if (!(window.height > corner.top - corner.bottom)) return null;
  for (const scale of context.scale === null ? scalesWithin(context, piece, window) : [context.scale]) {
    for (const arrangement of ["projection", "beside", "under"] as const) {
      const made = boardAt(context, piece, scale, arrangement, window);
      const move = placeFor(made, frame, corner);
      if (move) return { layout, field, scale, board: made, move, frame, block: blockAt(scale), corner };
    }
  }
  return null;
}

/** How the board moves into the frame clear of the title block: over it, beside it, or with a free corner of its own there. */
function placeFor({ bounds, blocks }: Board, frame: Box, corner: Box): Vec2 | null {
  const inside = growBox(frame, -AIR);
  const middle = (inside.left + inside.right - bounds.left - bounds.right) / 2, left = inside.left - bounds.left, top = inside.top - bounds.top;
  const over = (corner.top + AIR + inside.top - bounds.bottom - bounds.top) / 2, upright = (inside.bottom + inside.top - bounds.bottom - bounds.top) / 2;
  const moves = [{ x: middle, y: over }, { x: middle, y: upright }, { x: middle, y: top }, { x: left, y: upright }, { x: left, y: top }];
  return moves.find((move) => {
    const box = moveBox(bounds, move);
    const within = box.left >= inside.left - 1e-6 && box.right <= inside.right + 1e-6 && box.bottom >= inside.bottom - 1e-6 && box.top <= inside.top + 1e-6;
    return within && !Object.values(blocks).some((one) => boxesOverlap(growBox(moveBox(one.bounds, move), AIR), corner));
  }) ?? null;
}

/** Usual scales up to that at which the drawing fills the window, whatever its arrangement. */
function scalesWithin({ development, figures, words }: SheetContext, piece: number, window: { width: number; height: number }): number[] {
  const most = board(development, { ...window, piece, figures, words }).scale;
  return SCALES.filter((scale) => scale <= most * 1.05);
}

function boardAt({ development, figures, words }: SheetContext, piece: number, scale: number, arrangement: Arrangement, window: { width: number; height: number }): Board {
  return board(development, { ...window, piece, figures, words, at: { scale, arrangement } });
}

function cellsOf(context: SheetContext, index: number, scale: number): Cell[] {
  const { development, fabrication, figures, words } = context;
  const { field } = words;
  const made = fabrication.pieces[index];
  const count = development.pieces.length;
  const { projection } = development.job.drawing;
  return [
    { label: field.job, value: jobTitle(development, words), height: 5, large: 2 },
    { label: field.document, value: [words.document.board, words.conventions] },
    { label: field.piece, value: words.pieceOf(index + 1, count) },
    ...(made ? [{ label: field.sheet, value: sheetText(made, development.job.fabrication, figures, words) }] : []),
    ...footCells(context, scaleText(scale), words.sheetOf(index + 1, count)),
    { label: field.projection, value: "", drawn: { width: 28, height: 10, items: (middle) => projectionSymbol(projection, { x: middle.x - 5, y: middle.y }, 0.6) } },
    { label: field.drawn, value: "          " }, { label: field.checked, value: "          " }, { label: field.number, value: "          " },
  ];
}

function pageOf(context: SheetContext, { layout: { paper }, field, scale, board: made, move, frame, block, corner }: Drawn, index: number): Page {
  const { development, words } = context;
  const bands = bandsOf(context, field, paper, `${jobTitle(development, words)} · ${words.document.board} · ${scaleText(scale)}`, words.sheetOf(index + 1, development.pieces.length));
  const taken = [
    ...Object.values(made.blocks).map((one) => growBox(moveBox(one.bounds, move), AIR / 2)),
    corner,
  ];
  return pageOn(field, String(index + 1), [
    ...bands.items, polygon("frame", corners(frame)), ...block.at({ x: corner.left, y: corner.bottom }), ...made.items.map((item) => moveItem(item, move)), ...furnished(context, index, growBox(frame, -AIR / 2), taken),
  ]);
}

/** Description and table, each where there is room for it, the description first. */
function furnished({ development, figures, words, sentences }: SheetContext, index: number, frame: Box, taken: readonly Box[]): Item[] {
  const piece = development.pieces[index];
  const described = LINES.map((width) => ({ width, lines: sentences.flatMap((sentence) => wrapText(sentence, width, LETTERING)) }))
    .map(({ width, lines }) => ({ width, height: lines.length * PITCH, at: (top: Vec2) => lettered(lines, top) }));
  const placed: Item[] = [];
  const all = [...taken];
  for (const shapes of [sentences.length > 0 ? described : [], piece ? [stationTable(piece, figures, words)] : []]) {
    const [found] = shapes.flatMap((shape) => {
      const free = freeBox(frame, all, { width: shape.width + AIR, height: shape.height + AIR });
      return free ? [{ ...shape, corner: { x: free.left + AIR / 2, y: free.top - AIR / 2 } }] : [];
    });
    if (!found) continue;
    const { width, height, at, corner } = found;
    placed.push(...at(corner));
    all.push(boxOfPoints([corner, { x: corner.x + width, y: corner.y - height }]));
  }
  return placed;
}

function lettered(lines: readonly string[], { x, y }: Vec2): Item[] {
  return lines.map((text, i) => ({ kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x, y: y - LETTERING - i * PITCH } }));
}
