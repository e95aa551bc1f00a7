import { useFormat } from "../quantity/useFormat";
import { FaultSentence } from "../screen/FaultSentence";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { classWords as said } from "../words/class";
import { Tick } from "./ChoicesFields";
import { useClassList } from "./classList";
import { placeFault, placeHere, typePlace, usePlace } from "./programPlace";
import { cancelSet, startSet, useSetJob, type SetKind } from "./setJob";

/** The verbs that make the files of the class; while one is made, how far it is and the verb that gives it up. `ready`: there is a piece for everybody. */
export function SetVerbs({ ready }: { ready: boolean }) {
  const set = useSetJob();
  const job = useApp(selectJob);
  const students = useClassList((list) => list.students);
  const format = useFormat();
  const { typed, on } = usePlace();
  const place = typed.trim() || placeHere();
  const fault = placeFault(place);
  const barred = on && fault === "no-address";
  const make = (kind: SetKind) => void startSet(kind, { job, students, format, place: on ? place : null });
  return (
    <fieldset className="ranges set">
      <legend>{said.make}</legend>
      <p className="found">{said.asSheets}</p>
      <Tick name={said.qr} help="qr" on={on} turn={(now) => usePlace.setState({ on: now })} />
      {on && (
        <label className="place">
          <span>{said.place}</span>
          <input className="reading" type="url" data-help="qr" spellCheck={false} autoComplete="off" placeholder={placeHere()} value={typed} aria-invalid={barred || undefined} onChange={(event) => typePlace(event.target.value)} />
        </label>
      )}
      {on && fault && <p className={barred ? "fault" : "notice"} role={barred ? "alert" : undefined}>{barred ? said.placeFault : said.placeHere}</p>}
      {set.state === "making" ? (
        <Making stage={set.stage} done={set.done} of={set.of} />
      ) : (
        <p className="class-verbs">
          {(Object.keys(said.files) as SetKind[]).map((kind) => (
            <button key={kind} type="button" className="verb" disabled={!ready || (kind !== "answers" && barred)} onClick={() => make(kind)}>
              {said.files[kind]}
            </button>
          ))}
        </p>
      )}
      <p role="status" className="found">
        {set.state === "idle" && set.saved !== null && said.saved(set.saved)} {set.state === "idle" && set.withoutCode && said.noCode}
      </p>
      {set.state === "failed" && (
        <p className="fault" role="alert">
          {set.problem ? <>{said.failedSheet(set.who)} <FaultSentence fault={{ kind: "problem", problem: set.problem }} /></> : said.failedAll}
        </p>
      )}
    </fieldset>
  );
}

function Making({ stage, done, of }: { stage: keyof typeof said.progress; done: number; of: number }) {
  const text = said.progress[stage](done, of);
  return (
    <p className="class-verbs">
      <progress aria-label={text} value={done} max={of} />
      <span>{text}</span>
      <button type="button" className="verb" onClick={cancelSet}>{said.cancel}</button>
    </p>
  );
}
