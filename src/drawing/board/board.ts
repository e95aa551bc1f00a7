// The board: front, top and side view and the pattern on one sheet, at the largest scale that fills a given window.

import type { Development, Piece, Vec2 } from "../../core/index";
import type { Arrangement, BlockName } from "./arrange";
import { boundsOf } from "../bounds";
import { type Box, joinBoxes } from "../box";
import type { Item } from "../display";
import { type Figures, METRIC } from "../figures";
import { LETTERING, textWidth } from "../lettering";
import { type Metrics, metricsFor } from "../metrics";
import { moveItem } from "../moveItem";
import type { PatternAllowances } from "../pattern/patternAllowances";
import { patternBlock } from "../pattern/patternBlock";
import type { Place } from "../place";
import { principalDimensions } from "../dimension/principalDimensions";
import { type Draw, drawnAtScale, scaleToFit } from "./scaleToFit";
import { type ViewPlan, viewBlock } from "./viewBlock";
import { viewGeometry } from "../view/viewGeometry";
import { type ViewName, type Views, viewsOf } from "../view/views";
import { type DrawingWords, ENGLISH } from "../words";

/** What is written on a board and added to it, wherever it stands. */
interface Contents {
  readonly words?: DrawingWords;
  readonly figures?: Figures;
  /** Which piece of the development; the first unless given. */
  readonly piece?: number;
  /** What the shop adds to the pattern of each piece, to be shown on it. */
  readonly allowances?: readonly PatternAllowances[] | null;
}

export interface BoardOptions extends Contents {
  /** The window to fill, sheet mm. */
  readonly width: number;
  readonly height: number;
  /** Height of figures, mm; 3.5 unless given. */
  readonly lettering?: number;
  /** "projection" keeps the pattern in projection however small the drawing gets; "best" (unless given) lets it stand apart. */
  readonly arrangement?: "best" | "projection";
  /** Only some of its items, at a scale of their own at least: a drawing without its dimensions can be smaller. */
  readonly only?: { readonly keeps: (item: Item) => boolean; readonly leastScale: number };
  /** Drawn at this scale and in this arrangement, whatever the window: a board that is looked at more closely. */
  readonly at?: Pick<Board, "scale" | "arrangement">;
}

export interface Block {
  readonly name: BlockName;
  /** How the block's model coordinates fall on the sheet: `onSheet`, `fromSheet`. */
  readonly place: Place;
  readonly bounds: Box;
  /** The board's items that belong to it. */
  readonly items: readonly Item[];
}

export interface Board {
  readonly items: readonly Item[];
  /** Of everything drawn; the middle is that of the window (0, 0, width, height). */
  readonly bounds: Box;
  /** Sheet mm a model mm. */
  readonly scale: number;
  readonly arrangement: Arrangement;
  readonly lettering: number;
  readonly views: Views;
  readonly blocks: Readonly<Record<BlockName, Block>>;
}

/** Margin of paper inside the window, in lettering heights. */
const MARGIN = 1;

/**
 * The board of one piece of a development. In a window too small for its lettering the board is larger than the window:
 * `bounds` says how large.
 * @throws RangeError for a window without size or a piece that does not exist.
 */
export function board(development: Development, options: BoardOptions): Board {
  const { width, height, lettering = LETTERING, words = ENGLISH, figures = METRIC, arrangement = "best", only } = options;
  if (!(width > 0 && height > 0)) throw new RangeError(`invalid window: ${width} × ${height}`);
  const metrics = metricsFor(lettering);
  const { drawBlock, piece, views } = drawer(development, metrics, options);
  const keeps = only ? only.keeps : () => true;
  const draw: Draw = (scale) => eachBlock((name) => drawBlock(name, scale).filter(keeps));
  const window = { width: width - 2 * MARGIN * lettering, height: height - 2 * MARGIN * lettering };
  const stand = { attitude: piece.form.attitude, projection: development.job.drawing.projection, between: metrics.between };
  const best = options.at ? drawnAtScale(draw, options.at.scale, options.at.arrangement, stand) : scaleToFit(draw, {
    ...stand, window, apart: arrangement === "best",
    leastScale: only ? only.leastScale : leastScale(piece, metrics, `${words.stretchOut} ${figures.length(piece.form.girth)}`),
  });
  const shift = { x: (width - best.bounds.left - best.bounds.right) / 2, y: (height - best.bounds.bottom - best.bounds.top) / 2 };
  const blocks = eachBlock((name) => {
    const origin = { x: best.origins[name].x + shift.x, y: best.origins[name].y + shift.y };
    return blockAt(name, best.blocks[name], placeFor(name, piece, origin, best.scale));
  });
  return { lettering, views, scale: best.scale, arrangement: best.arrangement, ...together(blocks) };
}

/**
 * The board of a piece that has changed a little, at the scale and in the places of the one before, though the drawing may leave the
 * window: while something on it is dragged.
 */
export function redrawn(before: Board, development: Development, contents: Contents): Board {
  const { drawBlock, views } = drawer(development, metricsFor(before.lettering), contents);
  return { ...before, views, ...together(eachBlock((name) => blockAt(name, drawBlock(name, before.scale), before.blocks[name].place))) };
}

function eachBlock<Value>(of: (name: BlockName) => Value): Record<BlockName, Value> {
  return { front: of("front"), top: of("top"), side: of("side"), pattern: of("pattern") };
}

/** The circle takes a few figures across, the stretch-out its own length in figures. */
function leastScale({ form: { cutRadius: radius, girth } }: Piece, { lettering, gap }: Metrics, stretchOut: string): number {
  return Math.max((4 * lettering) / (2 * radius), (textWidth(stretchOut, lettering) + 4 * gap) / girth);
}

/** Draws each block about its own origin. Everything that does not depend on the scale is worked out once. */
function drawer(development: Development, metrics: Metrics, { piece: index = 0, allowances, words = ENGLISH, figures = METRIC }: Contents) {
  const piece = development.pieces[index];
  if (!piece) throw new RangeError(`no piece ${index} among ${development.pieces.length}`);
  const views = viewsOf(piece.form.attitude, development.job.drawing.projection);
  const measures = principalDimensions(development, piece, views, figures, words);
  const plan = (name: ViewName): ViewPlan => {
    const view = views[name];
    return { development, piece, views, view, lines: viewGeometry(piece, view), measures: measures[name] };
  };
  const plans = { front: plan("front"), top: plan("top"), side: plan("side") };
  const drawBlock = (name: BlockName, scale: number): readonly Item[] => {
    const place = placeFor(name, piece, { x: 0, y: 0 }, scale);
    return name === "pattern" ? patternBlock(piece, place, metrics, figures, words, allowances?.[index] ?? null) : viewBlock(plans[name], place, metrics, figures);
  };
  return { drawBlock, piece, views };
}

/** What belongs to a lying pipe is turned with it, but for its end: that view is a circle either way. */
function placeFor(name: BlockName, piece: Piece, origin: Vec2, scale: number): Place {
  return { origin, scale, turn: piece.form.attitude === "upright" || name === "side" ? 0 : -90 };
}

/** A block with its items moved to its place. */
function blockAt(name: BlockName, items: readonly Item[], place: Place): Block {
  const moved = items.map((item) => moveItem(item, place.origin));
  return { name, place, bounds: boundsOf(moved), items: moved };
}

function together(blocks: Board["blocks"]): Pick<Board, "blocks" | "items" | "bounds"> {
  const all = Object.values(blocks);
  return { blocks, items: all.flatMap(({ items }) => items), bounds: all.map(({ bounds }) => bounds).reduce(joinBoxes) };
}
