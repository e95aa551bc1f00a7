// Is a place on the sheet that is cut out, or beside it?

import { type Contour, type Vec2, flattenSegments } from "../../core/index";
import { type Box, boxOfPoints } from "../box";

export interface CutSheet {
  readonly bounds: Box;
  /** Whether a place lies on the sheet, openings left out. */
  holds(place: Vec2): boolean;
}

/** Straightness of the cut lines, mm: fine enough for lettering. */
const COARSE = 0.1;

/** The sheet inside these cut lines. */
export function cutSheet(contours: readonly Pick<Contour, "segments">[]): CutSheet {
  const loops = contours.map(({ segments }) => flattenSegments(segments, COARSE));
  const holds = ({ x, y }: Vec2): boolean => loops.reduce((inside, loop) => {
    const crossed = loop.filter((b, i) => {
      const a = loop.at(i - 1) ?? b;
      return a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y);
    });
    return crossed.length % 2 === 1 ? !inside : inside;
  }, false);
  return { bounds: boxOfPoints(loops.flat()), holds };
}
