// The pages of a pattern too large for one sheet: a cover with the map of the sheets, then one page a tile.

import type { Vec2 } from "../core/index";
import type { Box } from "./box";
import type { Item } from "./display";
import { LETTERING } from "./lettering";
import { pageFrame } from "./pageFrame";
import { patternLoops } from "./patternOutline";
import type { Page, Template } from "./sheet";
import { polygon, stroke } from "./strokes";
import { OVERLAP, type Tile, tilesOver } from "./tiles";

/** Match marks stand at these parts of a shared edge. */
const MARKS = [0.25, 0.75];

/** Half a match mark, mm. */
const MARK = 3;

/** Cover and tiles on paper of the given size (mm). */
export function tilePages(template: Template, width: number, height: number): Page[] {
  const { art, bounds, words, sentences, inches } = template;
  const header = (name: string) => [`${words.sheet} ${name} · ${sentences[0] ?? ""} · ${words.checkRuler}`];
  const { room } = pageFrame(width, height, header("A1"), inches);
  const size = { width: room.right - room.left, height: room.top - room.bottom };
  const tiles = tilesOver(art, bounds, size.width, size.height);
  const pages = tiles.map((tile): Page => {
    const { items, room: window } = pageFrame(width, height, header(tile.name), inches);
    const move = { x: window.left - tile.window.left, y: window.top - tile.window.top };
    const clip = { ...window, bottom: window.top - size.height };
    return { name: tile.name, width, height, items: [...items, { kind: "group", move, clip, items: art }, ...seams(tile, tiles, clip)] };
  });
  return [coverPage(template, tiles, width, height), ...pages];
}

/** Trim lines along the middle of each overlap, with the marks that fall together on both sheets. */
function seams(tile: Tile, tiles: readonly Tile[], window: Box): Item[] {
  const has = (column: number, row: number) => tiles.some((other) => other.column === tile.column + column && other.row === tile.row + row);
  const { left, right, bottom, top } = window;
  const half = OVERLAP / 2;
  const edges: [boolean, Vec2, Vec2][] = [
    [has(-1, 0), { x: left + half, y: bottom }, { x: left + half, y: top }],
    [has(1, 0), { x: right - half, y: bottom }, { x: right - half, y: top }],
    [has(0, -1), { x: left, y: top - half }, { x: right, y: top - half }],
    [has(0, 1), { x: left, y: bottom + half }, { x: right, y: bottom + half }],
  ];
  return edges.filter(([shared]) => shared).flatMap(([, from, to]) => [stroke("trim", from, to), ...MARKS.flatMap((part) =>
    matchMark({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }))]);
}

function matchMark({ x, y }: Vec2): Item[] {
  return [
    stroke("match mark", { x: x - MARK, y }, { x: x + MARK, y }),
    stroke("match mark", { x, y: y - MARK }, { x, y: y + MARK }),
    { kind: "circle", pen: "match mark", centre: { x, y }, radius: MARK / 2 },
  ];
}

/** The whole pattern small, under the borders and names of the sheets. */
function coverPage({ piece, words, sentences, inches }: Template, tiles: readonly Tile[], width: number, height: number): Page {
  const { items, room } = pageFrame(width, height, [...sentences, words.map, words.joining], inches);
  const left = Math.min(...tiles.map(({ window }) => window.left)), right = Math.max(...tiles.map(({ window }) => window.right));
  const bottom = Math.min(...tiles.map(({ window }) => window.bottom)), top = Math.max(...tiles.map(({ window }) => window.top));
  const scale = Math.min((room.right - room.left) / (right - left), (room.top - room.bottom) / (top - bottom)) * 0.95;
  const origin = { x: (room.left + room.right - scale * (left + right)) / 2, y: (room.bottom + room.top - scale * (bottom + top)) / 2 };
  const point = (x: number, y: number): Vec2 => ({ x: origin.x + scale * x, y: origin.y + scale * y });
  const half = OVERLAP / 2;
  const map = tiles.flatMap(({ name, window }): Item[] => [
    polygon("trim", [
      point(window.left + half, window.bottom + half), point(window.right - half, window.bottom + half),
      point(window.right - half, window.top - half), point(window.left + half, window.top - half),
    ]),
    {
      kind: "text", pen: "lettering", text: name, height: LETTERING, align: "middle", turn: 0, clear: true,
      at: point((window.left + window.right) / 2, (window.bottom + window.top) / 2),
    },
  ]);
  return { name: "cover", width, height, items: [...items, ...patternLoops(piece.pattern.loops, { origin, scale, turn: 0 }), ...map] };
}
