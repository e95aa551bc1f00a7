// An end plate at full size: its cut line, its bend lines, its centre and the ends of its axes, where its high side is, how it is seen.

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

/** Half the cross at the centre, mm; the ends of the axes as a share of the plate's size. */
const CROSS = 3, AXIS = 0.1;

/** Pitch of lines, length of the arrow to the high side, in lettering heights. */
const PITCH = 1.7, ARROW = 3;

/** A bend line nearer to the axis than this, mm, lies on it. */
const NOTHING = 1e-6;

/** The plate in its own plane's millimetres, seen from above, the high side of a sloping one up. Words without room are left out. */
export function plateDrawing(plate: EndPlate, { figures = METRIC, words = ENGLISH_BLANK, lettering = LETTERING }: BlankOptions = {}): Item[] {
  const { contour, shape, gap, folds, semiAxes, blank: { from, to, width, height } } = plate;
  const bends = folds.map(({ from: a, to: b }) => stroke("bend line", a, b));
  const lines = [...contourItems([contour]), ...bends, ...axes(from, to, shape === "disc" ? 0 : AXIS, folds.every(({ from: { x } }) => Math.abs(x) > NOTHING))];
  const space = clearSpace(CLEAR);
  space.take(lines);
  const size = shape === "disc" ? `⌀${figures.length(width)}` : `${figures.length(width)} × ${figures.length(height)}`;
  const sentences = [plate.name, size, ...(gap > 0 ? [`${words.gap} ${figures.length(gap)}`] : []), words.seenFromAbove, ...(shape === "bent" ? [words.bent] : [])];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const places = [0, -0.8, 0.8, -1, 1, -0.5, 0.5].flatMap((aside) => [-1, -1.4, -0.6, 1, 1.4, 0.6, 0].map((along) => ({ x: middle.x + (aside * width) / 4, y: middle.y + (along * height) / 4 })));
  const about = placed(places.map((place) => block(sentences, place, lettering)), space);
  const highs = [0, 1, -1].flatMap((aside) => [1, 0.7, 0.4, 0, -0.4].map((along) => ({ x: middle.x + (aside * width) / 5, y: middle.y + (along * height) / 4 })));
  return [...lines, ...about, ...(shape !== "bent" && semiAxes.long > semiAxes.short ? placed(highs.map((place) => highSide(words.highSide, place, lettering)), space) : [])];
}

/** A cross at the pipe's axis, and the ends of the plate's own axes (`share` of its size long), where the plate reaches them; no upright axis under a bend line. */
function axes(from: Vec2, to: Vec2, share: number, upright: boolean): Item[] {
  if (from.y >= 0 || to.y <= 0 || from.x >= 0 || to.x <= 0) return [];
  const [across, up] = [share * (to.x - from.x), share * (to.y - from.y)];
  const stretches = [[-CROSS, CROSS], ...(share > 0 ? [[from.x, from.x + across], [to.x - across, to.x]] : [])];
  const rising = [[-CROSS, CROSS], ...(share > 0 ? [[from.y, from.y + up], [to.y - up, to.y]] : [])];
  return [
    ...stretches.map(([a = 0, b = 0]) => stroke("centre line", { x: a, y: 0 }, { x: b, y: 0 })),
    ...(upright ? rising : []).map(([a = 0, b = 0]) => stroke("centre line", { x: 0, y: a }, { x: 0, y: b })),
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
