import { exerciseOf, variantOfCode, type Job } from "../../core/index";
import { fetchChanges, sayNotFetched } from "../store/changing";
import { say, useApp } from "../store/store";
import { classWords as said } from "../words/class";
import type { CodeFault } from "./codeFault";
import { openedFrom, rememberOpened } from "./openedPieces";
import { unpackVariant } from "./packedVariant";
import { variantJob } from "./variantJob";
import { readVariantLink } from "./variantLink";

/** Puts the variant of a code on the board; why not, when the exercise, on the board or of the piece there, has none of this code. */
export async function openCode(typed: string): Promise<CodeFault | null> {
  const onBoard = useApp.getState().development.job;
  const exercise = openedFrom(onBoard) ?? onBoard;
  const found = variantOfCode(exerciseOf(exercise), typed);
  if (!found.ok) return found.reason;
  await putOnBoard(variantJob(found));
  rememberOpened(useApp.getState().development.job, exercise);
  return null;
}

/** Puts the exercise of the piece on the board back there. */
export async function leavePiece(): Promise<void> {
  const exercise = openedFrom(useApp.getState().development.job);
  if (exercise) await putOnBoard(exercise);
}

/** Puts the piece an address carries on the board; an address without one changes nothing. */
export async function openLinked(hash: string): Promise<void> {
  const asked = readVariantLink(hash);
  if (!asked) return;
  // The piece is kept from now on: loaded again, the page shows what became of it.
  history.replaceState(null, "", "#check");
  const job = await unpackVariant(asked.packed);
  if (!job) return say({ kind: "file", name: said.linkedPiece(asked.code), fault: { kind: "problem", problem: { code: "not-a-job", field: "" } } });
  await putOnBoard(job);
}

async function putOnBoard(job: Job): Promise<void> {
  const untouched = useApp.getState().development === useApp.getInitialState().development;
  await fetchChanges().then((by) => by.replaceJob(job, said.opened), sayNotFetched);
  // The example that every page begins with is no work to bring back.
  if (untouched && useApp.getState().message?.kind === "set-aside") say(null);
}
