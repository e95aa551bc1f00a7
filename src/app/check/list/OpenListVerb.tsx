import { useRef, useState } from "react";
import { sayNotFetched } from "../../store/changing";
import { listWords as said } from "../../words/markingList";

/** Opens a CSV file of students and readings; what came of it is said. */
export function OpenListVerb() {
  const file = useRef<HTMLInputElement>(null);
  const [outcome, setOutcome] = useState<{ readonly ok: boolean; readonly said: string } | null>(null);
  const open = (chosen: File) => void import("./openList").then(({ openList }) => openList(chosen)).then(setOutcome).catch(sayNotFetched);
  return (
    <>
      <button type="button" className="verb" onClick={() => file.current?.click()}>
        {said.openFile}
      </button>
      <input
        type="file" accept=".csv,.tsv,.txt,text/csv" hidden ref={file} aria-label={said.openFile}
        onChange={(event) => {
          const [chosen] = event.target.files ?? [];
          event.target.value = "";
          if (chosen) open(chosen);
        }}
      />
      {outcome && (
        <span className="list-outcome">
          <span className={outcome.ok ? "found" : "fault"} role={outcome.ok ? "status" : "alert"}>
            {outcome.said}
          </span>
        </span>
      )}
    </>
  );
}
