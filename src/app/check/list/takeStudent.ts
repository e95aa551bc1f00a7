import { fetchChanges, sayNotFetched } from "../../store/changing";
import { say, useApp } from "../../store/store";
import type { Job } from "../../../core/index";
import { listWords } from "../../words/markingList";
import { holdStudent, pieceKey, useSheets } from "../sheets";
import { takeScale, useMarkingList, type ListRow } from "./markingList";
import { rowJob } from "./rowJob";

/** Takes a student's sheet in hand, with their piece on the board. False when the exercise has no piece of their code. */
export async function takeStudent(row: ListRow): Promise<boolean> {
  const asListed = pieceOf(row);
  if (!asListed) return false;
  // Opened by the code on their sheet, the piece knows the scale of that sheet.
  const onBoard = useApp.getState().development.job;
  if (pieceKey(onBoard) === pieceKey(asListed)) takeScale(onBoard);
  await putOnBoard(pieceOf(row) ?? asListed);
  holdStudent({ id: row.id, piece: pieceKey(useApp.getState().development.job) });
  return true;
}

function pieceOf(row: ListRow): Job | null {
  const { exercise } = useMarkingList.getState();
  const found = exercise && rowJob(exercise, row);
  return found?.ok ? found.job : null;
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
  const isSame = pieceKey(now) === pieceKey(job);
  if (isSame && JSON.stringify([now.marking, now.drawing]) === JSON.stringify([job.marking, job.drawing])) return;
  const isOfList = isSame || useSheets.getState().student?.piece === pieceKey(now) || (exercise !== null && pieceKey(exercise) === pieceKey(now));
  await fetchChanges().then((by) => by.replaceJob(job, listWords.taken), sayNotFetched);
  if (isOfList && useApp.getState().message?.kind === "set-aside") say(null);
}
