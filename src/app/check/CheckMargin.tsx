import { useRef } from "react";
import { MarginHelp } from "../help/MarginHelp";
import { checkHelp } from "../words/help/check";
import { useLaid } from "../photo/laid";
import { PhotoPart } from "../photo/PhotoPart";
import { useFormat } from "../quantity/useFormat";
import { checkWords } from "../words/check";
import { words } from "../words/interface";
import { useVariantAddress } from "../class/useVariantAddress";
import { DrawingFields } from "./DrawingFields";
import { OverlayVerb } from "./OverlayVerb";
import { useMarkingList } from "./list/markingList";
import { ListVerb, OwnerVerb, StudentInHand, useStudentAt } from "./list/StudentInHand";
import { MarksView } from "./MarksView";
import { ReadingsTable } from "./ReadingsTable";
import { bringOver, changeSheet, pieceKey, sheetKey, useSheets } from "./sheets";
import { useCheck, useDiagnosis } from "./useCheck";
import { VerdictView } from "./VerdictView";
import "../theme/check.css";

/** A hand-drawn development held against the true one: what was read, the verdict in words, why, and the marks. */
export function CheckMargin() {
  const margin = useRef<HTMLElement>(null);
  useVariantAddress();
  const check = useCheck();
  const diagnosis = useDiagnosis(check);
  const { trade } = useFormat();
  const last = useSheets(({ last }) => last);
  // Whose turn it is stands first while a photograph is read.
  const reading = useLaid((state) => state.picture !== null);
  const keeps = useSheets(({ keeps }) => keeps);
  const inHand = useSheets(({ student }) => student);
  const rows = useMarkingList((list) => list.rows);
  const at = useStudentAt(check?.job ?? null);
  if (!check) return null;
  const student = rows[at]?.name ?? "";
  const empty = Object.keys(check.sheet.readings).length === 0;
  const verdict = <VerdictView key="verdict" check={check} diagnosis={diagnosis} />;
  const photo = <PhotoPart key="photo" check={check} />;
  return (
    <section id="description" className="description check" aria-label={checkWords.label(trade)} tabIndex={-1} ref={margin}>
      <div className="description-page">
        {!keeps && <p className="notice">{words.message.noStorage}</p>}
        {at >= 0 && <StudentInHand at={at} />}
        {reading ? [photo, verdict] : [verdict, photo]}
        <ReadingsTable key={sheetKey(check.job, inHand)} check={check} />
        <p className="check-verbs">
          {empty && at < 0 && last !== null && last !== pieceKey(check.job) && (
            <button type="button" className="verb" onClick={bringOver}>
              {checkWords.bringOver}
            </button>
          )}
          {!empty && (
            <button type="button" className="verb" onClick={() => changeSheet((sheet) => ({ ...sheet, readings: {} }))}>
              {checkWords.clear}
            </button>
          )}
        </p>
        <p className="check-verbs">
          <OverlayVerb check={check} student={student} />
          {at < 0 && <ListVerb />}
          {at < 0 && <OwnerVerb job={check.job} />}
        </p>
        <DrawingFields check={check} />
        <MarksView check={check} diagnosis={diagnosis} />
      </div>
      <MarginHelp margin={margin} table={checkHelp} />
    </section>
  );
}
