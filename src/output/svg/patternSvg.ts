// A cut drawing as an SVG file in real millimetres, a group for each layer; arcs stay arcs, curves curves.

import { CUT_LAYERS, layerOf } from "../../drawing/blank/cutLayers";
import { boundsOf } from "../../drawing/bounds";
import { growBox } from "../../drawing/box";
import type { Item } from "../../drawing/display";
import { roundNumber } from "./roundNumber";
import { FACE, attributes, element, escaped } from "./svgElement";
import { viewBox } from "./viewBox";

/** Paper round the drawing, mm. */
const MARGIN = 5;

/** The file as text: a user unit is a millimetre; groups carry the names of their layers as ids, empty ones are left out. */
export function patternSvg(items: readonly Item[], title: string): string {
  const box = growBox(items.length === 0 ? { left: 0, right: 0, bottom: 0, top: 0 } : boundsOf(items), MARGIN);
  const size = { width: `${roundNumber(box.right - box.left)}mm`, height: `${roundNumber(box.top - box.bottom)}mm` };
  const groups = CUT_LAYERS.flatMap((layer) => {
    const own = items.filter((item) => "pen" in item && layerOf(item.pen) === layer);
    return own.length === 0 ? [] : [`<g id="${layer}">`, ...own.map((item) => element(item, false, [])), "</g>"];
  });
  const root = { xmlns: "http://www.w3.org/2000/svg", ...size, viewBox: viewBox(box), "font-family": FACE };
  return [`<svg ${attributes(root)}>`, `<title>${escaped(title)}</title>`, ...groups, "</svg>", ""].join("\n");
}
