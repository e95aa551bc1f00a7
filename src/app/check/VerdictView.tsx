import type { Diagnosis, Mistake, Reading, Verdict } from "../../core/index";
import { useFormat } from "../quantity/useFormat";
import { checkWords } from "../words/check";
import { diagnosisSentences } from "../words/mistakes";
import { unseenSentence } from "../words/unseen";
import { placeName } from "./placeName";
import type { Check } from "./useCheck";

/** With fewer readings most mistakes would not show, which goes without saying. */
const fewest = 4;

/** The verdict in words, why, and what the readings cannot show. */
export function VerdictView({ check, diagnosis }: { check: Check; diagnosis: Diagnosis | null }) {
  const format = useFormat();
  const { verdict, readings, job } = check;
  if (!verdict) return <p className="verdict">{checkWords.begin(format.trade)}</p>;
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  const name = (reading: Reading) => placeName(check, reading, format.trade);
  const unseen = diagnosis && readings.values.length >= fewest ? unseenSentence(stillUnseen(diagnosis), format.trade) : null;
  return (
    <div className="verdict" role="status">
      <p>
        <Summary check={check} verdict={verdict} />
      </p>
      {verdict.girth === "stepped" && <p>{checkWords.stepped(length(verdict.girths.stepped), length(verdict.girths.exact), check.rule.girth !== "exact", format.trade)}</p>}
      {diagnosis && diagnosisSentences(diagnosis, { job, readings, length, angle: (value) => format.angle(value), name, trade: format.trade }).map((sentence, i) => <p key={i}>{sentence}</p>)}
      {unseen !== null && <p className="unshown">{unseen}</p>}
    </div>
  );
}

/** What would not have shown, but for what is named as likely: another way of the same mistake says nothing more. */
function stillUnseen(diagnosis: Diagnosis): readonly Mistake[] {
  const explanations = diagnosis.kind === "explained" ? [diagnosis.explanation] : diagnosis.kind === "alike" ? diagnosis.explanations : [];
  const named: Mistake["kind"][] = explanations.flatMap(({ mistakes }) => mistakes.map(({ kind }) => kind)).filter((kind) => kind !== "seam");
  return diagnosis.unseen.filter(({ kind }) => !named.includes(kind));
}

/** How many readings are off, and the worst of them. */
function Summary({ check, verdict }: { check: Check; verdict: Verdict }) {
  const format = useFormat();
  const { tolerance, angle } = check.rule;
  const length = (mm: number) => `${format.length(mm)} ${format.unit}`;
  const lengths = verdict.judged.filter(({ reading }) => reading.line !== "angle");
  const allowed = [...(lengths.length > 0 ? [length(tolerance)] : []), ...(lengths.length < verdict.judged.length ? [checkWords.anglesBy(format.angle(angle), lengths.length > 0)] : [])].join(" ");
  const worst = lengths.reduce<(typeof lengths)[number] | null>((most, one) => (Math.abs(one.deviation ?? 0) > Math.abs(most?.deviation ?? 0) ? one : most), null);
  return (
    <>
      {verdict.outside === 0 ? checkWords.allWithin(verdict.judged.length, allowed) : checkWords.outside(verdict.outside, verdict.judged.length, allowed)}{" "}
      {worst && verdict.largest > 0 && checkWords.largest(length(verdict.largest), placeName(check, worst.reading, format.trade), length(verdict.meanSize))}
    </>
  );
}
