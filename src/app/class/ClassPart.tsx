import { useMemo, useRef } from "react";
import { exerciseFault, exerciseOf } from "../../core/index";
import { MarginHelp } from "../help/MarginHelp";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { classWords as said } from "../words/class";
import { classHelp } from "../words/help/class";
import { ChoicesFields } from "./ChoicesFields";
import { ClassFields } from "./ClassFields";
import { useClassList } from "./classList";
import { CountSentence } from "./CountSentence";
import { KeepsFields } from "./KeepsFields";
import { OpenPiece } from "./OpenPiece";
import { openedFrom, useOpened } from "./openedPieces";
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
  const from = useOpened((opened) => openedFrom(job, opened));
  const margin = useRef<HTMLDivElement>(null);
  return (
    <div className="class-set" ref={margin}>
      <h2>{said.title}</h2>
      <p className="found">{said.begin}</p>
      <RangesFields exercise={exercise} />
      <ChoicesFields exercise={exercise} />
      <KeepsFields exercise={exercise} />
      {sound && <CountSentence exercise={exercise} search={search} wanted={students.length} />}
      <ClassFields />
      <SetVerbs ready={sound && found.length >= students.length} />
      <OpenPiece key={from ? "piece" : "exercise"} students={students} found={from ? [] : found} isPiece={from !== null} />
      <MarginHelp margin={margin} table={classHelp} />
    </div>
  );
}
