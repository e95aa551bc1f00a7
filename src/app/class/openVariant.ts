import { exerciseOf, variantOfCode, type Job } from "../../core/index";
import { fetchChanges, sayNotFetched } from "../store/changing";
import { say, useApp } from "../store/store";
import { classWords as said } from "../words/class";
import { unpackVariant } from "./packedVariant";
import { variantJob } from "./variantJob";
import { readVariantLink } from "./variantLink";

export type CodeFault = Extract<ReturnType<typeof variantOfCode>, { ok: false }>["reason"];

/** Puts the variant of a code on the board; why not, when the exercise on the board has none of this code. */
export async function openCode(typed: string): Promise<CodeFault | null> {
  const found = variantOfCode(exerciseOf(useApp.getState().development.job), typed);
  if (!found.ok) return found.reason;
  await putOnBoard(variantJob(found));
  return null;
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
