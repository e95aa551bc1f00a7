import { useFormat } from "../quantity/useFormat";
import { checkWords } from "../words/check";
import { diagnosisSentences } from "../words/mistakes";
import { useDiagnosis, type Check } from "./useCheck";

/** The verdict in words, and why. */
export function VerdictView({ check }: { check: Check }) {
  const format = useFormat();
  const diagnosis = useDiagnosis(check);
  const { verdict, readings, rule, job, places } = check;
  if (!verdict) return <p className="verdict">{checkWords.begin(format.trade)}</p>;
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  const worst = verdict.judged.filter(({ reading }) => reading.line !== "angle").reduce<(typeof verdict.judged)[number] | null>((most, one) => (Math.abs(one.deviation ?? 0) > Math.abs(most?.deviation ?? 0) ? one : most), null);
  const name = (reading: (typeof readings.values)[number]) => checkWords.nameOf(reading, (at) => places.blocks[0]?.rows.find((row) => row.at === at)?.label ?? String(at), format.trade);
  return (
    <div className="verdict" role="status">
      <p>
        {verdict.outside === 0 ? checkWords.allWithin(verdict.judged.length, length(rule.tolerance)) : checkWords.outside(verdict.outside, verdict.judged.length, length(rule.tolerance))}{" "}
        {worst && verdict.largest > 0 && checkWords.largest(length(verdict.largest), name(worst.reading), length(verdict.meanSize))}
      </p>
      {verdict.girth === "stepped" && <p>{checkWords.stepped(length(verdict.girths.stepped), length(verdict.girths.exact), rule.girth !== "exact", format.trade)}</p>}
      {diagnosis && diagnosisSentences(diagnosis, { job, readings, length, angle: (value) => format.angle(value), name, trade: format.trade }).map((sentence, i) => <p key={i}>{sentence}</p>)}
    </div>
  );
}
