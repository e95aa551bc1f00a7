// An end plate at full size: its cut line, the two axes, where its high side is, how it is seen.

import type { EndPlate, Vec2 } from "../../core/index";
import { boundsOf } from "../bounds";
import { type ClearSpace, clearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";
import { METRIC } from "../figures";
import { LETTERING } from "../lettering";
import { stroke } from "../strokes";
import type { BlankOptions } from "./blankDrawing";
import { ENGLISH_BLANK } from "./blankWords";
import { contourItems } from "./cutLines";

/** Words keep this many mm from lines. */
const CLEAR = 0.4;

/** Pitch of lines, length of the arrow to the high side, in lettering heights. */
const PITCH = 1.7, ARROW = 3;

/** The plate in its own plane's millimetres, seen from above, its high side up. Words without room are left out. */
export function plateDrawing(plate: EndPlate, { figures = METRIC, words = ENGLISH_BLANK, lettering = LETTERING }: BlankOptions = {}): Item[] {
  const { contour, shape, gap, blank: { from, to, width, height } } = plate;
  const lines = [...contourItems([contour]), ...axes(from, to)];
  const space = clearSpace(CLEAR);
  space.take(lines);
  const size = shape === "disc" ? `⌀${figures.length(width)}` : `${figures.length(width)} × ${figures.length(height)}`;
  const sentences = [plate.name, size, ...(gap > 0 ? [`${words.gap} ${figures.length(gap)}`] : []), words.seenFromAbove];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const places = [1, 0.7, 1.3, 0.4, 1.6].flatMap((along) => [-1, 1].map((side) => ({ x: middle.x + (side * width) / 4, y: middle.y - (along * height) / 5 })));
  const about = placed(places.map((place) => block(sentences, place, lettering)), space);
  const highs = [1, 0.8, 1.2, 0.5].map((along) => ({ x: middle.x + width / 6, y: middle.y + (along * height) / 4 }));
  return [...lines, ...about, ...(shape === "disc" ? [] : placed(highs.map((place) => highSide(words.highSide, place, lettering)), space))];
}

/** Both axes through the pipe's own, where the plate reaches it. */
function axes(from: Vec2, to: Vec2): Item[] {
  return [
    ...(from.y < 0 && to.y > 0 ? [stroke("centre line", { x: from.x, y: 0 }, { x: to.x, y: 0 })] : []),
    ...(from.x < 0 && to.x > 0 ? [stroke("centre line", { x: 0, y: from.y }, { x: 0, y: to.y })] : []),
  ];
}

/** Lines one under the other about a place. */
function block(lines: readonly string[], { x, y }: Vec2, lettering: number): TextItem[] {
  const top = y + ((lines.length - 1) / 2) * PITCH * lettering - lettering / 2;
  return lines.map((text, i) => ({ kind: "text", pen: "lettering", text, height: lettering, align: "middle", turn: 0, at: { x, y: top - i * PITCH * lettering } }));
}

/** The words under an arrow that points up the slope. */
function highSide(text: string, { x, y }: Vec2, lettering: number): Item[] {
  const [foot, tip] = [{ x, y: y + 1.3 * lettering }, { x, y: y + (1.3 + ARROW) * lettering }];
  return [stroke("sheet mark", foot, tip), { kind: "arrowhead", pen: "sheet mark", tip, direction: Math.PI / 2, length: lettering }, ...block([text], { x, y }, lettering)];
}

/** The first of several groups that meets nothing. */
function placed(groups: readonly (readonly Item[])[], space: ClearSpace): readonly Item[] {
  const free = groups.find((group) => space.isFree(boundsOf(group))) ?? [];
  space.take(free);
  return free;
}
