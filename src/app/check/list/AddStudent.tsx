import { useState, type FormEvent } from "react";
import { selectJob } from "../../store/select";
import { useApp } from "../../store/store";
import { listWords as said } from "../../words/markingList";
import "../../theme/reading.css";
import { MOST_STUDENTS, freshId, putRows, useMarkingList } from "./markingList";

/** Adds a student by name, and by the code on their sheet where pieces differ. */
export function AddStudent() {
  const rows = useMarkingList((list) => list.rows);
  const [name, setName] = useState("");
  const [code, setCode] = useState("");
  const add = (event: FormEvent) => {
    event.preventDefault();
    if ((name.trim() === "" && code.trim() === "") || rows.length >= MOST_STUDENTS) return;
    putRows([...rows, { id: freshId(), name: name.trim(), code: code.trim().toUpperCase() }], selectJob(useApp.getState()));
    setName("");
    setCode("");
  };
  return (
    <form className="add-student" onSubmit={add}>
      <label>
        {said.addName} <input className="reading" value={name} maxLength={120} autoComplete="off" onChange={(event) => setName(event.target.value)} />
      </label>
      <label>
        {said.addCode} <input className="reading" value={code} maxLength={40} autoComplete="off" spellCheck={false} onChange={(event) => setCode(event.target.value)} />
      </label>
      <button type="submit" className="verb">
        {said.add}
      </button>
    </form>
  );
}
