import { useState } from "react";
import { saveText } from "../../files/saveText";
import { fileName } from "../../files/fileName";
import { useFormat } from "../../quantity/useFormat";
import { Panel } from "../../screen/Panel";
import { selectJob } from "../../store/select";
import { useSettings } from "../../store/settings";
import { useApp } from "../../store/store";
import { words } from "../../words/interface";
import { listWords as said } from "../../words/markingList";
import { pieceKey, studentKey, useSheets } from "../sheets";
import { AddStudent } from "./AddStudent";
import { BeginList } from "./BeginList";
import { ListTable } from "./ListTable";
import { listCsv } from "./listCsv";
import { endList, useMarkingList } from "./markingList";
import { OpenListVerb } from "./OpenListVerb";
import { leaveStudent } from "./takeStudent";
import { useResults } from "./useResults";
import "../../theme/markingList.css";

/** The whole class: who, which piece, what was read, the verdict, the marks and the likely mistake; in and out as CSV. */
export function ListPanel() {
  const { exercise, rows, keeps } = useMarkingList();
  const { results, done } = useResults();
  return (
    <Panel title={said.title}>
      {!keeps && <p className="notice">{words.message.noStorage}</p>}
      {rows.length === 0 ? <BeginList /> : <p>{said.intro}</p>}
      {rows.length > 0 && <ListTable rows={rows} results={results} />}
      {rows.length > 0 && !done && <p role="status">{said.working(results.size, rows.length)}</p>}
      <AddStudent />
      <p className="panel-verbs">
        <OpenListVerb />
        {exercise && rows.length > 0 && <SaveVerb title={exercise.title || words.untitled} ready={done} results={results} />}
        {exercise && <EndVerb />}
      </p>
    </Panel>
  );
}

function SaveVerb({ title, ready, results }: { title: string; ready: boolean; results: ReturnType<typeof useResults>["results"] }) {
  const format = useFormat();
  const comma = useSettings((settings) => settings.comma);
  const save = () => {
    const { all } = useSheets.getState();
    const text = listCsv([...results.values()], (id) => all[studentKey(id)], format, { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places: 2 });
    saveText(fileName(`${title}, ${said.fileName}`, "csv"), "text/csv", text);
  };
  return (
    <button type="button" className="verb" disabled={!ready} onClick={save}>
      {said.saveFile}
    </button>
  );
}

/** Asks once more, since names and order are gone afterwards. */
function EndVerb() {
  const [asked, setAsked] = useState(false);
  const end = async () => {
    // A student's piece does not stay behind as the work.
    if (useSheets.getState().student?.piece === pieceKey(selectJob(useApp.getState()))) await leaveStudent();
    endList();
  };
  return (
    <button type="button" className="verb" onClick={() => (asked ? void end() : setAsked(true))} onBlur={() => setAsked(false)}>
      {asked ? said.endSure : said.end}
    </button>
  );
}
