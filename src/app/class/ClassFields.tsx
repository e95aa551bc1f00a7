import { memo, useState } from "react";
import { PanelNumber } from "../output/PanelNumber";
import { words } from "../words/interface";
import { classWords as said } from "../words/class";
import { chooseColumns, chooseCount, forgetList, takeListFile, takeListText, useClassList } from "./classList";
import { Tick } from "./ChoicesFields";
import { sharedNames, unprintableNames } from "./studentsOf";

/** The list of the class: pasted, opened, or only a number of students. */
export const ClassFields = memo(function ClassFields() {
  const { rows, students, fault, keeps } = useClassList();
  const [text, setText] = useState("");
  const listed = rows.length > 0;
  const take = () => void takeListText(text).then(() => !useClassList.getState().fault && setText(""));
  const shared = listed ? sharedNames(students) : [];
  const unprintable = listed ? unprintableNames(students) : [];
  return (
    <fieldset className="ranges class-fields">
      <legend>{said.list}</legend>
      {!listed && (
        <p className="sentence">
          {said.without}
          <span data-help="count"><PanelNumber label={said.count} quantity="count" value={students.length} put={chooseCount} /></span>
          {said.withoutTail}
        </p>
      )}
      {listed && <Columns />}
      <textarea aria-label={said.paste} placeholder={said.paste} data-help="list" rows={3} spellCheck={false} value={text} onChange={(event) => setText(event.target.value)} />
      <div className="class-verbs">
        <button type="button" className="verb" disabled={text.trim() === ""} onClick={take}>{said.take}</button>
        <OpenList />
        {listed && <button type="button" className="verb" onClick={forgetList}>{said.forget}</button>}
      </div>
      {fault && <p className="fault" role="alert">{said.listFault(fault)}</p>}
      {shared.length > 0 && <p className="notice">{said.shared(shared)}</p>}
      {unprintable.length > 0 && <p className="notice">{said.unprintable(unprintable)}</p>}
      <p className="found">{keeps ? said.onDevice : words.message.noStorage}</p>
    </fieldset>
  );
});

function OpenList() {
  return (
    <label className="verb file-verb">
      {said.openList}
      <input
        type="file" className="unseen" accept=".csv,.tsv,.txt,text/csv,text/plain" aria-label={said.listFile}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) void takeListFile(file);
          event.target.value = "";
        }}
      />
    </label>
  );
}

/** How many students there are, and in which columns they stand. */
function Columns() {
  const { rows, columns, students } = useClassList();
  const width = Math.max(...rows.map((cells) => cells.length));
  const example = rows[0] ?? [];
  const options = Array.from({ length: width }, (_, index) => <option key={index} value={index}>{said.column(index, example[index] ?? "")}</option>);
  const choice = (label: string, value: number | null, put: (column: number | null) => void, open: boolean) => (
    <label>
      {label}{" "}
      <select className="choice" data-help="columns" value={value ?? ""} onChange={(event) => put(event.target.value === "" ? null : Number(event.target.value))}>
        {open && <option value="">{said.noColumn}</option>}
        {options}
      </select>
    </label>
  );
  return (
    <>
      <p><strong>{said.students(students.length)}</strong></p>
      {width > 1 && (
        <p className="columns">
          {choice(said.nameColumn, columns.name, (name) => chooseColumns({ name: name ?? 0 }), false)}
          {choice(said.secondColumn, columns.second, (second) => chooseColumns({ second }), true)}
          {choice(said.groupColumn, columns.group, (group) => chooseColumns({ group }), true)}
        </p>
      )}
      <Tick name={said.heads} help="heads" on={columns.heads} turn={(heads) => chooseColumns({ heads })} />
    </>
  );
}
