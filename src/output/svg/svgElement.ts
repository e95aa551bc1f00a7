// One item of a display list as SVG text.

import type { Box } from "../../drawing/box";
import type { CircleItem, GroupItem, Item, Ref, TextItem } from "../../drawing/display";
import { arrowheadData, pathData, surfaceData } from "./pathData";
import { type PenAttributes, inkAttributes, penAttributes, surfaceAttributes } from "./penAttributes";
import { roundNumber } from "./roundNumber";
import { textAttributes } from "./textAttributes";

const NAMED: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", "\"": "&quot;", "'": "&#39;" };

/** The typefaces of a file that stands alone. */
export const FACE = "B612, 'Atkinson Hyperlegible', 'DejaVu Sans', sans-serif";

/** The item's element; windows of groups are numbered on in `clips`. */
export function element(item: Item, colour: boolean, clips: Box[]): string {
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

/** Names and values as attributes. */
export function attributes(values: object): string {
  return Object.entries(values as Record<string, string>).map(([name, value]) => `${name}="${escaped(value)}"`).join(" ");
}

/** Text made harmless in elements and attributes; characters that XML forbids are dropped. */
export function escaped(value: string): string {
  const allowed = value.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, "").replace(/\p{Surrogate}/gu, "\uFFFD");
  return allowed.replace(/[&<>"']/g, (letter) => NAMED[letter] ?? letter);
}
