// One piece at true size: on one page where one takes it, else on tiles with a cover.

import type { Box } from "../box";
import { moveItem } from "../moveItem";
import { polygon } from "../strokes";
import { type Layout, layoutsFor, tileLayouts } from "./layouts";
import type { Page } from "./page";
import { BAND } from "./pageBands";
import { paperField } from "./paperField";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf } from "./sheetContext";
import { templateCells } from "./templateCells";
import type { TemplatePart } from "./templatePart";
import { tileSection } from "./tileSection";
import { corners, titleBlock } from "./titleBlock";

/** Round the pattern, and the width of a title block beside it, mm. */
const AIR = 4, COLUMN = 82;

/** The pages of one piece: the first layout that takes it whole, else the tiles that take the fewest pages. */
export function templateSection(context: SheetContext, part: TemplatePart): Section {
  const { setup } = context;
  for (const layout of layoutsFor(setup, neededWhole(context, part))) {
    const page = onePage(context, part, layout, "below") ?? onePage(context, part, layout, "right");
    if (page) return { kind: "template", title: part.name, layout: "one", paper: layout.paper.name, landscape: layout.landscape, columns: 1, rows: 1, scale: 1, pages: [page] };
  }
  const tiled = tileLayouts(setup, artSize(part)).map((layout) => tileSection(context, part, layout));
  const [first, ...others] = tiled;
  if (!first) throw new RangeError("no paper to lay tiles on");
  return others.reduce((best, one) => (one.pages.length < best.pages.length ? one : best), first);
}

/** Of everything drawn of the part, with air, mm. */
function artSize({ bounds }: TemplatePart) {
  return { width: bounds.right - bounds.left + 2 * AIR, height: bounds.top - bounds.bottom + 2 * AIR };
}

/** Room for the part and its title block: on a roll the block stands under an upright part, across the roll, and beside one that lies. */
function neededWhole(context: SheetContext, part: TemplatePart) {
  const { width, height } = artSize(part);
  const { paper, margin } = context.setup;
  const block = (within: number) => titleBlock(templateCells(context, part, context.words.sheetOf(1, 1)), within).height;
  if (paper.kind !== "roll") return { width: width + COLUMN, height };
  return { width: width + COLUMN, height: height + block(paper.width - 2 * margin - BAND) };
}

/** The page with the pattern in the middle of its room, or null when there is no room for it. */
function onePage(context: SheetContext, part: TemplatePart, { paper, landscape }: Layout, place: "below" | "right"): Page | null {
  const field = paperField(paper, landscape, context.setup);
  const bands = bandsOf(context, field, paper, part.heading, context.words.sheetOf(1, 1));
  const { room } = bands;
  const block = titleBlock(templateCells(context, part, context.words.sheetOf(1, 1)), place === "below" ? room.right - room.left : COLUMN);
  const rest: Box = place === "below" ? { ...room, bottom: room.bottom + block.height } : { ...room, right: room.right - COLUMN };
  const { bounds } = part;
  const { width, height } = artSize(part);
  if (width > rest.right - rest.left || height > rest.top - rest.bottom || block.height > room.top - room.bottom) return null;
  const move = { x: (rest.left + rest.right - bounds.left - bounds.right) / 2, y: (rest.bottom + rest.top - bounds.bottom - bounds.top) / 2 };
  const corner = place === "below" ? { x: room.left, y: room.bottom } : { x: rest.right, y: room.bottom };
  return pageOn(field, "1", [...bands.items, ...block.at(corner), polygon("frame", corners(room)), ...part.art.map((item) => moveItem(item, move))]);
}
