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
import { type Draw, type Fitted, drawnAtScale, scaleToFit } from "./scaleToFit";
import { type ViewPlan, viewBlock } from "./viewBlock";
import { viewGeometry } from "../view/viewGeometry";
import { type ViewName, type Views, viewsOf } from "../view/views";
import { type DrawingWords, ENGLISH } from "../words";

export interface BoardOptions {
  /** The window to fill, sheet mm. */
  readonly width: number;
  readonly height: number;
  /** Height of figures, mm; 3.5 unless given. */
  readonly lettering?: number;
  readonly words?: DrawingWords;
  readonly figures?: Figures;
  /** Which piece of the development; the first unless given. */
  readonly piece?: number;
  /** "projection" keeps the pattern in projection however small the drawing gets; "best" (unless given) lets it stand apart. */
  readonly arrangement?: "best" | "projection";
  /** What the shop adds to the pattern of each piece, to be shown on it. */
  readonly allowances?: readonly PatternAllowances[] | null;
  /** Only some of its items, at a scale of their own at least: a drawing without its dimensions can be smaller. */
  readonly only?: { readonly keeps: (item: Item) => boolean; readonly leastScale: number };
  /** Drawn at this scale and in this arrangement, whatever the window: a board that is looked at more closely. */
  readonly at?: Pick<Board, "scale" | "arrangement">;
  /** Keeps the scale and the places of the blocks of this board, though the drawing may leave the window: while something is dragged. */
  readonly hold?: Board | undefined;
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
  const index = options.piece ?? 0;
  const { draw: drawAll, piece, views } = drawer(development, index, options.allowances?.[index] ?? null, metrics, figures, words);
  const draw = only ? keeping(drawAll, only.keeps) : drawAll;
  if (options.hold) return { lettering, views, ...settled(heldAs(options.hold, draw), { x: 0, y: 0 }, piece) };
  const window = { width: width - 2 * MARGIN * lettering, height: height - 2 * MARGIN * lettering };
  const stand = { attitude: piece.form.attitude, projection: development.job.drawing.projection, between: metrics.between };
  const best = options.at ? drawnAtScale(draw, options.at.scale, options.at.arrangement, stand) : scaleToFit(draw, {
    ...stand, window, apart: arrangement === "best",
    leastScale: only ? only.leastScale : leastScale(piece, metrics, `${words.stretchOut} ${figures.length(piece.form.girth)}`),
  });
  const shift = { x: (width - best.bounds.left - best.bounds.right) / 2, y: (height - best.bounds.bottom - best.bounds.top) / 2 };
  return { lettering, views, ...settled(best, shift, piece) };
}

function keeping(draw: Draw, keeps: (item: Item) => boolean): Draw {
  return (scale) => {
    const { front, top, side, pattern } = draw(scale);
    return { front: front.filter(keeps), top: top.filter(keeps), side: side.filter(keeps), pattern: pattern.filter(keeps) };
  };
}

/** The drawing as it stands on another board. */
function heldAs({ scale, arrangement, bounds, blocks: { front, top, side, pattern } }: Board, draw: Draw): Fitted {
  const origins = { front: front.place.origin, top: top.place.origin, side: side.place.origin, pattern: pattern.place.origin };
  return { scale, arrangement, bounds, origins, blocks: draw(scale) };
}

/** The circle takes a few figures across, the stretch-out its own length in figures. */
function leastScale({ form: { cutRadius: radius, girth } }: Piece, { lettering, gap }: Metrics, stretchOut: string): number {
  return Math.max((4 * lettering) / (2 * radius), (textWidth(stretchOut, lettering) + 4 * gap) / girth);
}

/** Everything that does not depend on the scale is worked out once. */
function drawer(development: Development, index: number, added: PatternAllowances | null, metrics: Metrics, figures: Figures, words: DrawingWords) {
  const piece = development.pieces[index];
  if (!piece) throw new RangeError(`no piece ${index} among ${development.pieces.length}`);
  const { job } = development;
  const views = viewsOf(piece.form.attitude, job.drawing.projection);
  const measures = principalDimensions(development, piece, views, figures, words);
  const plan = (name: ViewName): ViewPlan => {
    const view = views[name];
    return { development, piece, views, view, lines: viewGeometry(piece, view), measures: measures[name] };
  };
  const plans = { front: plan("front"), top: plan("top"), side: plan("side") };
  const draw: Draw = (scale) => {
    const block = (name: ViewName) => viewBlock(plans[name], placeFor(name, piece, { x: 0, y: 0 }, scale), metrics, figures);
    const pattern = patternBlock(piece, placeFor("pattern", piece, { x: 0, y: 0 }, scale), metrics, figures, words, added);
    return { front: block("front"), top: block("top"), side: block("side"), pattern };
  };
  return { draw, piece, views };
}

/** What belongs to a lying pipe is turned with it, but for its end: that view is a circle either way. */
function placeFor(name: BlockName, piece: Piece, origin: Vec2, scale: number): Place {
  return { origin, scale, turn: piece.form.attitude === "upright" || name === "side" ? 0 : -90 };
}

/** The fitted drawing moved to the middle of the window. */
function settled(fitted: Fitted, shift: Vec2, piece: Piece): Omit<Board, "lettering" | "views"> {
  const block = (name: BlockName): Block => {
    const origin = { x: fitted.origins[name].x + shift.x, y: fitted.origins[name].y + shift.y };
    const items = fitted.blocks[name].map((item) => moveItem(item, origin));
    return { name, place: placeFor(name, piece, origin, fitted.scale), bounds: boundsOf(items), items };
  };
  const blocks = { front: block("front"), top: block("top"), side: block("side"), pattern: block("pattern") };
  const all = Object.values(blocks);
  return { items: all.flatMap((one) => one.items), bounds: all.map(({ bounds }) => bounds).reduce(joinBoxes), scale: fitted.scale, arrangement: fitted.arrangement, blocks };
}
