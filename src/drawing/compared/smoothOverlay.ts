// On the pattern: the curve a drafter would draw through the stations of one end, over the true edge, and a lettered circle round
// the place where it strays farthest (as for any detail that is drawn enlarged beside).

import { type Cubic, type Piece, type SmoothGap, smoothCubics } from "../../core/index";
import type { Board } from "../board/board";
import { boxWithin } from "../boxWithin";
import { clearSpace } from "../clearSpace";
import type { CircleItem, Item, PathItem, TextItem } from "../display";
import { textBox } from "../lettering";
import { metricsFor } from "../metrics";
import { onSheet, segmentOnSheet } from "../place";

export interface SmoothEndShown {
  readonly end: "top" | "bottom";
  readonly gap: SmoothGap;
  /** Names the detail. */
  readonly letter: string;
}

/** Radii of the circle round the place, lettering heights: the first that touches no figure. */
const ROUNDS = [1.1, 0.8, 0.6, 0.45];

/** Items over the pattern of a board. */
export function smoothOverlay(board: Board, piece: Piece, { end, gap, letter }: SmoothEndShown): readonly Item[] {
  const { place } = board.blocks.pattern;
  const curves = smoothCubics(piece, end).map((chain): PathItem => ({
    kind: "path", pen: "smooth curve", closed: false, segments: chain.map((cubic: Cubic) => segmentOnSheet(place, cubic)),
  }));
  const centre = onSheet(place, { x: (gap.edge.x + gap.curve.x) / 2, y: (gap.edge.y + gap.curve.y) / 2 });
  const figures = clearSpace(0);
  figures.take(board.items.filter(({ kind }) => kind === "text"));
  const rounds = ROUNDS.map((round): CircleItem => ({ kind: "circle", pen: "dimension", centre, radius: round * board.lettering }));
  const circle = rounds.find((one) => !figures.meetsFigures([one])) ?? rounds.at(-1);
  return circle ? [...curves, circle, letterBeside(board, circle, letter)] : curves;
}

/** The letter at the first of twelve places round the circle where the paper is free, upper right first; else cleared, off other figures. */
function letterBeside(board: Board, { centre, radius }: CircleItem, text: string): TextItem {
  const { lettering: height, gap } = metricsFor(board.lettering);
  const everything = clearSpace(gap / 2), figures = clearSpace(gap / 3);
  everything.take(board.items);
  figures.take(board.items.filter(({ kind }) => kind === "text"));
  const places = [0, 1, 2, 3].flatMap((row) => Array.from({ length: 12 }, (_, i): TextItem => {
    const angle = Math.PI / 4 + (i * Math.PI) / 6;
    const away = radius + gap + (0.6 + 0.6 * row) * height;
    return { kind: "text", pen: "lettering", text, height, align: "middle", turn: 0, at: { x: centre.x + away * Math.cos(angle), y: centre.y + away * Math.sin(angle) - height / 2 } };
  })).filter((letter) => boxWithin(textBox(letter), board.bounds));
  const free = places.find((letter) => everything.isFree(textBox(letter)));
  const letter = free ?? places.find((one) => figures.isFree(textBox(one))) ?? places[0];
  if (!letter) throw new RangeError("no place round a circle");
  return free ?? { ...letter, clear: true };
}
