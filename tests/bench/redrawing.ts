import { board } from "../../src/drawing/board/board";
import { svgDocument } from "../../src/output/svg/svgDocument";
import { developed } from "./developing";

/** mm: a window of 1440 by 900 pixels at 96 pixels an inch. */
const sheet = { width: 381, height: 238 } as const;

/** Everything a change asks for short of React and the browser: development, board, and its drawing as text. */
export function redrawn(data: unknown): { readonly items: number; readonly text: string } {
  const { items, bounds } = board(developed(data), sheet);
  return { items: items.length, text: svgDocument(items, { box: bounds, title: "bench" }) };
}
