import { fetchChanges, sayNotFetched } from "../../store/changing";
import { say, useApp } from "../../store/store";
import type { Job } from "../../../core/index";
import { listWords } from "../../words/markingList";
import { holdStudent, pieceKey, useSheets } from "../sheets";
import { useMarkingList, type ListRow } from "./markingList";
import { rowJob } from "./rowJob";

/** Takes a student's sheet in hand, with their piece on the board. False when the exercise has no piece of their code. */
export async function takeStudent(row: ListRow): Promise<boolean> {
  const { exercise } = useMarkingList.getState();
  const found = exercise && rowJob(exercise, row);
  if (!found?.ok) return false;
  await putOnBoard(found.job);
  holdStudent({ id: row.id, piece: pieceKey(useApp.getState().development.job) });
  return true;
}

/** Puts the exercise back on the board. */
export async function leaveStudent(): Promise<void> {
  const { exercise } = useMarkingList.getState();
  if (exercise) await putOnBoard(exercise);
  holdStudent(null);
}

/** A piece of the list that was on the board can be taken again from the list: it is not set aside. */
async function putOnBoard(job: Job): Promise<void> {
  const { exercise } = useMarkingList.getState();
  const now = useApp.getState().development.job;
  if (pieceKey(now) === pieceKey(job)) return;
  const isOfList = useSheets.getState().student?.piece === pieceKey(now) || (exercise !== null && pieceKey(exercise) === pieceKey(now));
  await fetchChanges().then((by) => by.replaceJob(job, listWords.taken), sayNotFetched);
  if (isOfList && useApp.getState().message?.kind === "set-aside") say(null);
}
