// The contents of one page as PDF operators.

import type { PdfFont } from "pdfkit";
import { boundsOfItem } from "../../drawing/bounds";
import { type Box, boxesOverlap, growBox, moveBox } from "../../drawing/box";
import type { GroupItem, Item } from "../../drawing/display";
import type { PenName } from "../../drawing/pens";
import type { Page } from "../../drawing/sheets/page";
import { numberText } from "./numberText";
import { arrowheadOperators, circleOperators, pathOperators, surfaceOperators } from "./pathOperators";
import { type LayerName, layerOf, penOperators } from "./penInk";
import { textOperators } from "./textOperators";

/** Points in one mm: 72 to the inch. */
export const POINTS = 72 / 25.4;

/** Half a line, and the ink of letters beyond the room they are reckoned to take, mm. */
const INK = 3;

interface Hand {
  readonly font: PdfFont;
  readonly lines: string[];
  pen: PenName | null;
  layer: LayerName | null;
}

/** Everything on the page, for a coordinate system as pdfkit begins a page: points, y down from the top left corner. */
export function pageOperators({ width, height, items, stretch }: Page, font: PdfFont): string {
  const hand: Hand = { font, lines: [], pen: null, layer: null };
  const across = POINTS * stretch.x, up = POINTS * stretch.y;
  const left = (POINTS * width - across * width) / 2, down = (POINTS * height + up * height) / 2;
  hand.lines.push(`${[across, 0, 0, -up, left, down].map(matrixText).join(" ")} cm 1 j 0 G 0 g`);
  for (const item of items) draw(item, hand);
  if (hand.layer) hand.lines.push("EMC");
  return hand.lines.join("\n");
}

/** Finer than a length: it is multiplied by one. */
function matrixText(value: number): string {
  return value.toFixed(8).replace(/\.?0+$/, "");
}

function draw(item: Item, hand: Hand): void {
  switch (item.kind) {
    case "group":
      return drawGroup(item, hand);
    case "surface":
      return put("part", surfaceOperators(item), hand);
    case "text":
      return put(layerOf(item.pen), textOperators(item, hand.font), hand);
    case "arrowhead":
      return put(layerOf(item.pen), arrowheadOperators(item), hand);
    case "path":
      return stroke(item.pen, pathOperators(item), hand);
    case "circle":
      return stroke(item.pen, circleOperators(item), hand);
  }
}

function put(layer: LayerName, operators: string, hand: Hand): void {
  if (layer !== hand.layer) {
    if (hand.layer) hand.lines.push("EMC");
    hand.lines.push(`/OC /${layer} BDC`);
    hand.layer = layer;
  }
  hand.lines.push(operators);
}

function stroke(pen: PenName, operators: string, hand: Hand): void {
  const take = pen === hand.pen ? "" : `${penOperators(pen)} `;
  put(layerOf(pen), take + operators, hand);
  hand.pen = pen;
}

/** Only what shows in the window is written: a pattern on sixty sheets is not sixty patterns. */
function drawGroup({ move, clip, items }: GroupItem, hand: Hand): void {
  const { left, right, bottom, top } = clip;
  if (hand.layer) hand.lines.push("EMC");
  hand.lines.push(`q ${[left, bottom, right - left, top - bottom].map(numberText).join(" ")} re W n 1 0 0 1 ${numberText(move.x)} ${numberText(move.y)} cm`);
  Object.assign(hand, { layer: null, pen: null });
  const window = growBox(moveBox(clip, { x: -move.x, y: -move.y }), INK);
  for (const item of items) if (boxesOverlap(boxOf(item), window)) draw(item, hand);
  if (hand.layer) hand.lines.push("EMC");
  hand.lines.push("Q");
  Object.assign(hand, { layer: null, pen: null });
}

/** A straight line has no inside of its own. */
function boxOf(item: Item): Box {
  return growBox(boundsOfItem(item), 1e-6);
}
