import type { Format } from "../../quantity/format";
import { diagnosisSentences } from "../../words/mistakes";
import { listWords } from "../../words/markingList";
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

/** The verdict in a word or two. */
export function verdictWords(result: StudentResult): string {
  if (!result.ok) return listWords.faults[result.fault];
  const { verdict } = result.check;
  if (!verdict) return listWords.unread;
  return verdict.outside === 0 ? listWords.right : listWords.off(verdict.outside, verdict.judged.length);
}
