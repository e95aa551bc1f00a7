// A display list as a stand-alone SVG file in real millimetres.

import type { Box } from "../../drawing/box";
import type { CircleItem, GroupItem, Item, Ref, TextItem } from "../../drawing/display";
import { arrowheadData, pathData, surfaceData } from "./pathData";
import { type PenAttributes, inkAttributes, penAttributes, surfaceAttributes } from "./penAttributes";
import { roundNumber } from "./roundNumber";
import { textAttributes } from "./textAttributes";
import { viewBox } from "./viewBox";

export interface SvgOptions {
  /** What part of the sheet the file shows, mm; its size becomes the file's size. */
  readonly box: Box;
  readonly title: string;
  readonly desc?: string;
  /** Hues that help the eye on a screen; black unless asked for. */
  readonly colour?: boolean;
}

const FACE = "B612, 'Atkinson Hyperlegible', 'DejaVu Sans', sans-serif";
const NAMED: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", "\"": "&quot;", "'": "&#39;" };

/** The file as text; the same items always give the same text. */
export function svgDocument(items: readonly Item[], { box, title, desc, colour = false }: SvgOptions): string {
  const size = { width: `${roundNumber(box.right - box.left)}mm`, height: `${roundNumber(box.top - box.bottom)}mm` };
  const root = { xmlns: "http://www.w3.org/2000/svg", ...size, viewBox: viewBox(box), role: "img", "font-family": FACE };
  const head = [`<title>${escaped(title)}</title>`, ...(desc === undefined ? [] : [`<desc>${escaped(desc)}</desc>`])];
  const clips: Box[] = [];
  const body = items.map((item) => element(item, colour, clips));
  return [`<svg ${attributes(root)}>`, ...head, ...body, "</svg>", ""].join("\n");
}

function element(item: Item, colour: boolean, clips: Box[]): string {
  switch (item.kind) {
    case "path":
      return `<path ${attributes({ ...penAttributes(item.pen, colour), ...refAttributes(item.ref), d: pathData(item) })}/>`;
    case "circle":
      return circle(item, penAttributes(item.pen, colour));
    case "arrowhead":
      return `<path ${attributes({ ...inkAttributes(item.pen, colour), ...refAttributes(item.ref), d: arrowheadData(item) })}/>`;
    case "text":
      return text(item, inkAttributes(item.pen, colour));
    case "surface":
      return `<path ${attributes({ ...surfaceAttributes(item.side), d: surfaceData(item) })}/>`;
    case "group":
      return group(item, colour, clips);
  }
}

function circle({ centre, radius, ref }: CircleItem, pen: PenAttributes): string {
  const place = { cx: roundNumber(centre.x), cy: roundNumber(-centre.y), r: roundNumber(radius) };
  return `<circle ${attributes({ ...pen, ...refAttributes(ref), ...place })}/>`;
}

function text(item: TextItem, ink: PenAttributes): string {
  const clear = item.clear ? { stroke: "#ffffff", "stroke-width": "1.2", "stroke-linejoin": "round", "paint-order": "stroke" } : {};
  return `<text ${attributes({ ...ink, ...clear, ...refAttributes(item.ref), ...textAttributes(item) })}>${escaped(item.text)}</text>`;
}

function group({ move, clip, items }: GroupItem, colour: boolean, clips: Box[]): string {
  clips.push(clip);
  const id = `clip-${clips.length}`;
  const { left, right, bottom, top } = clip;
  const window = { x: roundNumber(left), y: roundNumber(-top), width: roundNumber(right - left), height: roundNumber(top - bottom) };
  const inner = items.map((item) => element(item, colour, clips));
  return [
    `<clipPath id="${id}"><rect ${attributes(window)}/></clipPath>`,
    `<g clip-path="url(#${id})"><g transform="translate(${roundNumber(move.x)} ${roundNumber(-move.y)})">`, ...inner, "</g></g>",
  ].join("\n");
}

function refAttributes(ref: Ref | undefined): Record<string, string> {
  if (!ref) return {};
  return { "data-clause": ref.clause, ...(ref.station !== undefined && { "data-station": String(ref.station) }) };
}

function attributes(values: object): string {
  return Object.entries(values as Record<string, string>).map(([name, value]) => `${name}="${escaped(value)}"`).join(" ");
}

/** Text made harmless in elements and attributes; characters that XML forbids are dropped. */
function escaped(value: string): string {
  const allowed = value.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, "").replace(/\p{Surrogate}/gu, "\uFFFD");
  return allowed.replace(/[&<>"']/g, (letter) => NAMED[letter] ?? letter);
}
