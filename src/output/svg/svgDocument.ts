// A display list as a stand-alone SVG file in real millimetres.

import type { Box } from "../../drawing/box";
import type { Item } from "../../drawing/display";
import { roundNumber } from "./roundNumber";
import { FACE, attributes, element, escaped } from "./svgElement";
import { viewBox } from "./viewBox";

export interface SvgOptions {
  /** What part of the sheet the file shows, mm; its size becomes the file's size. */
  readonly box: Box;
  readonly title: string;
  readonly desc?: string;
  /** Hues that help the eye on a screen; black unless asked for. */
  readonly colour?: boolean;
}

/** The file as text; the same items always give the same text. */
export function svgDocument(items: readonly Item[], { box, title, desc, colour = false }: SvgOptions): string {
  const size = { width: `${roundNumber(box.right - box.left)}mm`, height: `${roundNumber(box.top - box.bottom)}mm` };
  const root = { xmlns: "http://www.w3.org/2000/svg", ...size, viewBox: viewBox(box), role: "img", "font-family": FACE };
  const head = [`<title>${escaped(title)}</title>`, ...(desc === undefined ? [] : [`<desc>${escaped(desc)}</desc>`])];
  const clips: Box[] = [];
  const body = items.map((item) => element(item, colour, clips));
  return [`<svg ${attributes(root)}>`, ...head, ...body, "</svg>", ""].join("\n");
}
