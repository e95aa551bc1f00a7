import type { Board } from "../../drawing/board/board";
import { PhotoLayer } from "../photo/PhotoLayer";
import { ReadingLayer } from "../photo/ReadingLayer";
import { ReadPoints } from "./ReadPoints";

/** What checking lays on the board: under the drawing a photograph of it, over it what was read, and the hand that reads. */
export function CheckLayer({ board, under = false }: { board: Board; under?: boolean }) {
  return under ? <PhotoLayer board={board} /> : (
    <>
      <ReadPoints board={board} />
      <ReadingLayer board={board} />
    </>
  );
}
