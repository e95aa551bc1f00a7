// A teacher's scheme as a key prints it: what each item is marked for, and the figure that is looked for.

import type { Development, MarkingItem, Piece } from "../../core/index";
import type { Figures } from "../figures";
import type { MarkItem } from "./lessonSheets";
import type { AllLessonWords } from "./lessonWords";
import { seamText } from "./seamText";

/** The items of the job's scheme with what is expected of this piece; nothing is expected where the teacher's eye decides. */
export function markItems({ job }: Development, piece: Piece, figures: Figures, words: AllLessonWords): MarkItem[] {
  return job.marking.items.map(({ text, marks, by }) => {
    const expected = expectedOf(by);
    return { text, marks, ...(expected !== null && { expected }) };
  });

  function expectedOf(by: MarkingItem["by"]): string | null {
    const { lesson } = words;
    const tops = piece.stations.flatMap(({ top }) => top ?? []);
    switch (by) {
      case "eye":
        return null;
      case "girth":
        return figures.length(piece.pattern.girth);
      case "ordinates":
        return tops.length > 0 ? lesson.between(figures.length(Math.min(...tops)), figures.length(Math.max(...tops))) : null;
      case "angles": {
        const angles = job.part.cuts.flatMap((cut) => (cut.on && cut.kind === "plane" && cut.angle !== 0 ? [figures.angle(cut.angle)] : []));
        return angles.length > 0 ? [...new Set(angles)].join(", ") : null;
      }
      case "seam":
        return seamText(job, figures, words);
    }
  }
}
