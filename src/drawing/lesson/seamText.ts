// Where the seam is, in words.

import type { Job } from "../../core/index";
import type { Figures } from "../figures";
import type { AllLessonWords } from "./lessonWords";

/** "at the shortest element"; on a lying pipe left and right look up and down. */
export function seamText({ development: { seam }, part: { attitude } }: Job, figures: Figures, { sheet, lesson }: AllLessonWords): string {
  if (seam.at === "angle") return sheet.seamAtAngle(figures.angle(seam.angle));
  return attitude === "lying" && (seam.at === "left" || seam.at === "right") ? lesson.lyingSeam[seam.at] : sheet.seamAt[seam.at];
}
