import { useMemo, useState } from "react";
import { exerciseFault, exerciseOf } from "../../core/index";
import { switchHelp, useHelp } from "../help/helped";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { classWords as said } from "../words/class";
import { ChoicesFields } from "./ChoicesFields";
import { ClassFields } from "./ClassFields";
import { ClassHelp } from "./ClassHelp";
import { useClassList } from "./classList";
import { CountSentence } from "./CountSentence";
import { KeepsFields } from "./KeepsFields";
import { OpenPiece } from "./OpenPiece";
import { RangesFields } from "./RangesFields";
import { SetVerbs } from "./SetVerbs";
import { useSearch } from "./useSearch";
import "../theme/class.css";
import "../theme/reading.css";

/** Own dimensions for every student: what differs, what all keep to, who is in the class, and the files made of it. */
export function ClassPart() {
  const job = useApp(selectJob);
  const students = useClassList((list) => list.students);
  const exercise = useMemo(() => exerciseOf(job), [job]);
  const search = useSearch(job, students.length);
  const sound = exerciseFault(exercise) === null;
  const found = search?.found ?? [];
  const { on } = useHelp();
  const [helped, setHelped] = useState<string | null>(null);
  return (
    <div
      className="class-set"
      onFocus={({ target }) => setHelped((before) => target.closest<HTMLElement>("[data-help]")?.dataset["help"] ?? before)}
      onKeyDown={(event) => {
        if (event.key !== "F1") return;
        event.preventDefault();
        switchHelp();
      }}
    >
      <h2>{said.title}</h2>
      <p className="found class-begin">
        {said.begin}{" "}
        <button type="button" className="verb explain" aria-pressed={on} aria-keyshortcuts="F1" title={words.explainTitle} onClick={switchHelp}>
          {words.explain}
        </button>
      </p>
      <RangesFields exercise={exercise} />
      <ChoicesFields exercise={exercise} />
      <KeepsFields exercise={exercise} />
      {sound && <CountSentence exercise={exercise} search={search} wanted={students.length} />}
      <ClassFields />
      <SetVerbs ready={sound && found.length >= students.length} />
      <OpenPiece students={students} found={found} />
      {on && <ClassHelp field={helped} />}
    </div>
  );
}
