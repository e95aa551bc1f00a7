// A teacher's scheme as a key prints it: what each item is marked for, and the figure that is looked for.

import type { Development, MarkingItem, Piece } from "../../core/index";
import type { Figures } from "../figures";
import { chordSteps } from "../steps/chordSteps";
import { evenStations } from "./evenStations";
import type { MarkItem } from "./lessonSheets";
import type { AllLessonWords } from "./lessonWords";
import { seamText } from "./seamText";

/** The items of the job's scheme with what is expected of this piece; nothing is expected where the teacher's eye decides. */
export function markItems({ job }: Development, piece: Piece, figures: Figures, words: AllLessonWords): MarkItem[] {
  return job.marking.items.map(({ text, marks, by }) => {
    const expected = expectedOf(by);
    return { text, marks, ...(expected !== null && { expected }) };
  });

  function girthExpected(): string {
    const { girth: rule } = job.marking;
    const exact = figures.length(piece.pattern.girth), count = evenStations(piece);
    if (rule === "exact" || count < 2) return exact;
    const stepped = figures.length(chordSteps(piece.form.radius, count).total);
    return rule === "stepped" ? stepped : words.lesson.either(exact, stepped);
  }

  function expectedOf(by: MarkingItem["by"]): string | null {
    const { lesson } = words;
    const tops = piece.stations.flatMap(({ top }) => top ?? []);
    switch (by) {
      case "eye":
        return null;
      case "girth":
        return girthExpected();
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
