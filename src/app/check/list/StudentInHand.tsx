import { useMemo } from "react";
import type { Job } from "../../../core/index";
import { openPanel } from "../../screen/panel";
import { listWords as said } from "../../words/markingList";
import { pieceKey, useSheets } from "../sheets";
import { useMarkingList } from "./markingList";
import { leaveStudent, takeStudent } from "./takeStudent";

/** Whose drawing is being checked, and the way to the next; the way to the list. */
export function StudentInHand({ at }: { at: number }) {
  const rows = useMarkingList((list) => list.rows);
  const [previous, row, next] = [rows[at - 1], rows[at], rows[at + 1]];
  const verb = (label: string, act: () => Promise<unknown>) => (
    <button type="button" className="verb" onClick={() => void act()}>
      {label}
    </button>
  );
  return (
    <div className="student-in-hand">
      {row && <p aria-live="polite">{said.inHand(row.name || said.nobody, at + 1, rows.length)}</p>}
      <p className="check-verbs">
        {previous && verb(said.previous, () => takeStudent(previous))}
        {next && verb(said.next, () => takeStudent(next))}
        {verb(said.leave, leaveStudent)}
        <ListVerb />
      </p>
    </div>
  );
}

/** For a piece opened by its code or link: takes the student of the list whose code it is in hand. */
export function OwnerVerb({ job: { title } }: { job: Job }) {
  const rows = useMarkingList((list) => list.rows);
  const owner = rows.find(({ code }) => code !== "" && (title === code || title.endsWith(`, ${code}`)));
  return owner && (
    <button type="button" className="verb" onClick={() => void takeStudent(owner)}>
      {said.owner(owner.name || said.nobody)}
    </button>
  );
}

export function ListVerb() {
  return (
    <button type="button" className="verb" onClick={() => openPanel("marking-list")}>
      {said.open}
    </button>
  );
}

/** Where in the list the student stands whose piece is on the board; -1 for none. */
export function useStudentAt(job: Job | null): number {
  const rows = useMarkingList((list) => list.rows);
  const student = useSheets((sheets) => sheets.student);
  const piece = useMemo(() => job && pieceKey(job), [job]);
  return student?.piece === piece ? rows.findIndex(({ id }) => id === student.id) : -1;
}
