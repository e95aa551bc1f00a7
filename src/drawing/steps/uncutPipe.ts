// The pipe before it is cut, thin, in the views that see it from its side.

import type { Piece } from "../../core/index";
import type { Board } from "../board/board";
import type { Item } from "../display";
import { onSheet } from "../place";
import { polygon } from "../strokes";
import type { ViewName } from "../view/views";
import { broadsideNames } from "./cutSight";

/** A rectangle a view: the diameter by the length of the pipe, or by what the pattern needs where it reaches further. */
export function uncutPipe(
  { blocks, views }: Pick<Board, "blocks" | "views">, { form: { cutRadius: radius, length }, pattern: { height } }: Piece, names: readonly ViewName[] = broadsideNames(views),
): Item[] {
  const [low, high] = [Math.min(0, height[0]), Math.max(length, height[1])];
  const corners = [{ x: -radius, y: low }, { x: radius, y: low }, { x: radius, y: high }, { x: -radius, y: high }];
  return names.map((name) => polygon("projection", corners.map((corner) => onSheet(blocks[name].place, corner))));
}
