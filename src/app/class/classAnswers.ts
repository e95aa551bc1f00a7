import { develop, type ExerciseChoices, type Job } from "../../core/index";
import { answersCsv, type AnswerRow } from "../../output/csv/answersCsv";
import type { Format } from "../quantity/format";
import { useSettings } from "../store/settings";
import { classWords } from "../words/class";
import type { Pupil } from "./classSet";
import { dimensionsOf } from "./dimensions";
import { seamName } from "./namedSeams";

/** The answers of every student's piece as a CSV file; null when it is stopped. `told` after each student, false to stop. */
export async function classAnswers(pupils: readonly Pupil[], exercise: ExerciseChoices, format: Format, told: (done: number) => Promise<boolean>): Promise<string | null> {
  const rows: AnswerRow[] = [];
  for (const [place, { student, variant: { code, job } }] of pupils.entries()) {
    const outcome = develop(job);
    const piece = outcome.ok ? outcome.development.pieces[0] : undefined;
    if (!piece) throw new RangeError(`no piece for ${code}`);
    rows.push({ name: student.name, group: student.group, code, differs: differing(job, exercise, format), piece });
    if (!(await told(place + 1))) return null;
  }
  const { comma, places } = useSettings.getState();
  const { csv } = classWords;
  return answersCsv(rows, { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places, words: { ...csv, girth: csv.girth(format.trade) } });
}

/** What of this piece differs from those of others: its dimensions, its seam, its hand. */
function differing(job: Job, { ranges, seams, hands }: ExerciseChoices, format: Format): AnswerRow["differs"] {
  const { csv, handNames, hands: hand, seams: seam } = classWords;
  const dimensions = dimensionsOf(job, format.trade).filter(({ field }) => ranges.some((range) => range.field === field)).map(({ clauseName, token: { label, value, quantity } }) => ({
    heading: csv.dimension(clauseName, label, quantity === "angle" ? " °" : quantity === "length" ? ` ${format.unit}` : ""), figure: format.field(value, quantity),
  }));
  return [
    ...dimensions,
    ...(seams.length > 0 ? [{ heading: seam, figure: seamName(job.development.seam, job, format.trade, (degrees) => format.angle(degrees)) }] : []),
    ...(hands.length > 0 ? [{ heading: hand, figure: handNames[job.fabrication.hand] }] : []),
  ];
}
