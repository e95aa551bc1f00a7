import { develop } from "../../core/index";
import { answersCsv, type AnswerRow } from "../../output/csv/answersCsv";
import type { Format } from "../quantity/format";
import { useSettings } from "../store/settings";
import { classWords } from "../words/class";
import type { Pupil } from "./classSet";
import { dimensionsOf } from "./dimensions";

/** The answers of every student's piece as a CSV file; null when it is stopped. `told` after each student, false to stop. */
export async function classAnswers(pupils: readonly Pupil[], fields: ReadonlySet<string>, format: Format, told: (done: number) => Promise<boolean>): Promise<string | null> {
  const rows: AnswerRow[] = [];
  for (const [place, { student, variant: { code, job } }] of pupils.entries()) {
    const outcome = develop(job);
    const piece = outcome.ok ? outcome.development.pieces[0] : undefined;
    if (!piece) throw new RangeError(`no piece for ${code}`);
    const dimensions = dimensionsOf(job, format.trade).filter(({ field }) => fields.has(field)).map(({ clauseName, token: { label, value, quantity } }) => ({
      heading: classWords.csv.dimension(clauseName, label, quantity === "angle" ? " °" : quantity === "length" ? ` ${format.unit}` : ""), figure: format.field(value, quantity),
    }));
    rows.push({ name: student.name, group: student.group, code, dimensions, piece });
    if (!(await told(place + 1))) return null;
  }
  const { comma, places } = useSettings.getState();
  const { csv } = classWords;
  const words = { ...csv, girth: csv.girth(format.trade), end: csv.both };
  return answersCsv(rows, { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places, words });
}
