import { useEffect, useState } from "react";
import { lessonPages, type LessonOutcome } from "../../../drawing/lesson/lessonPages";
import { LESSON_KINDS, type LessonKind } from "../../../drawing/lesson/lessonKinds";
import { useOutput } from "../../output/choices";
import { correctionOn, usePrinters } from "../../output/printers";
import { useFormat } from "../../quantity/useFormat";
import { selectDevelopment } from "../../store/select";
import { useApp } from "../../store/store";
import { useTeaching } from "../teaching";
import { lessonOf } from "./lessonOf";
import { useSheets } from "./sheetChoices";

export interface LaidOut {
  readonly kind: LessonKind;
  readonly outcome: LessonOutcome;
}

/** How long the choices must rest before the sheets are laid out, ms. */
const rest = 150;

/** The sheets of all kinds chosen, laid out one after the other while the page stays awake; null until the last is. */
export function useLessons(): readonly LaidOut[] | null {
  const development = useApp(selectDevelopment);
  const choices = useSheets();
  const format = useFormat();
  const way = useTeaching((state) => state.way);
  const printer = useOutput((state) => state.printer);
  const printers = usePrinters((state) => state.all);
  const [laid, setLaid] = useState<readonly LaidOut[] | null>(null);
  useEffect(() => {
    setLaid(null);
    const correction = printer === null ? null : correctionOn(printers, printer, choices.paper);
    const kinds = LESSON_KINDS.filter((kind) => choices.kinds.includes(kind));
    const done: LaidOut[] = [];
    let timer = setTimeout(next, rest);
    function next(): void {
      const kind = kinds[done.length];
      if (kind === undefined) return setLaid(done);
      done.push({ kind, outcome: lessonPages(lessonOf(kind, development, choices, format, { correction, way })) });
      timer = setTimeout(next);
    }
    return () => clearTimeout(timer);
  }, [development, choices, format, way, printer, printers]);
  return laid;
}
