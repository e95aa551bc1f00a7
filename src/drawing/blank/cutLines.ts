// What is cut, and the lines that are bent: whole closed contours, slits, bend lines, the net line under a seam's allowance.

import type { Contour, Mark } from "../../core/index";
import type { PathItem } from "../display";

/** One closed path for each cut line. */
export function contourItems(contours: readonly Contour[]): PathItem[] {
  return contours.map(({ kind, segments }) => ({ kind: "path", pen: kind, segments, closed: true }));
}

/** Slits, bend lines and seam lines of the marks. */
export function bendItems(marks: readonly Mark[]): PathItem[] {
  return marks.flatMap((mark): PathItem[] => {
    if (mark.kind === "fold") return [{ kind: "path", pen: "bend line", segments: mark.path, closed: false }];
    if (mark.kind === "seam") return [{ kind: "path", pen: "seam line", segments: mark.path, closed: false }];
    return mark.kind === "slit" ? [{ kind: "path", pen: "slit", segments: [mark.line], closed: false }] : [];
  });
}
