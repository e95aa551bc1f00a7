import { useEffect, useState } from "react";
import { sayNotFetched } from "../../store/changing";
import { createDiagnoser } from "../diagnoser";
import { studentKey, useSheets } from "../sheets";
import { useMarkingList } from "./markingList";
import { studentResult, type StudentResult } from "./studentResult";

/** The results of the class by the student's id, one after the other as they are found; `done` when all are. */
export function useResults(): { readonly results: ReadonlyMap<string, StudentResult>; readonly done: boolean } {
  const exercise = useMarkingList((list) => list.exercise);
  const rows = useMarkingList((list) => list.rows);
  const sheets = useSheets(({ all }) => all);
  const [results, setResults] = useState<ReadonlyMap<string, StudentResult>>(new Map());
  useEffect(() => {
    if (!exercise) return;
    const diagnoser = createDiagnoser();
    let over = false;
    const find = async () => {
      const found = new Map<string, StudentResult>();
      setResults(found);
      for (const row of rows) {
        // The page draws and takes keys between two students.
        await new Promise((resolve) => setTimeout(resolve));
        if (over) return;
        const result = await studentResult(exercise, row, sheets[studentKey(row.id)], diagnoser);
        if (over) return;
        found.set(row.id, result);
        setResults(new Map(found));
      }
    };
    find().catch(sayNotFetched);
    return () => {
      over = true;
      diagnoser.stop();
    };
  }, [exercise, rows, sheets]);
  return { results, done: results.size === rows.length };
}
