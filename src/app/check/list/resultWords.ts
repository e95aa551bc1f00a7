import type { Format } from "../../quantity/format";
import { diagnosisSentences } from "../../words/mistakes";
import { listWords } from "../../words/markingList";
import { oddMarks } from "../marksByEye";
import { placeName } from "../placeName";
import type { StudentResult } from "./studentResult";

/** What was probably done, in a sentence; empty where everything is right or nothing was read. */
export function likelyWords(result: StudentResult, format: Format): string {
  if (!result.ok || !result.diagnosis) return "";
  const { check, diagnosis } = result;
  const [first = ""] = diagnosisSentences(diagnosis, {
    job: check.job, readings: check.readings, length: (mm) => `${format.length(mm)} ${format.unit}`, angle: (value) => format.angle(value),
    name: (reading) => placeName(check, reading, format.trade), trade: format.trade,
  });
  return first;
}

/** The verdict in a word or two, and how much of what was typed could not be read. */
export function verdictWords(result: StudentResult): string {
  if (!result.ok) return listWords.faults[result.fault];
  const { verdict } = result.check;
  const odd = oddCount(result);
  const said = !verdict ? listWords.unread : verdict.outside === 0 ? listWords.right : listWords.off(verdict.outside, verdict.judged.length);
  return odd > 0 ? `${said}; ${listWords.odd(odd)}` : said;
}

/** Fields whose text is no reading, or no marks that can be given. */
export function oddCount({ check: { faults, sheet, job } }: Extract<StudentResult, { ok: true }>): number {
  return Object.keys(faults).length + oddMarks(sheet, job.marking.items).length;
}
