import type { Cut } from "../../core/index";
import type { Change } from "../store/attempt";
import { change, useApp } from "../store/store";
import { clauseWords } from "../words/clauses";
import { words } from "../words/interface";
import { VerbMenu, type Verb } from "./VerbMenu";

/** The verbs of one cut. */
export function ClauseVerbs({ id, name }: { id: string; name: string }) {
  const cuts = useApp((state) => state.development.job.part.cuts);
  const index = cuts.findIndex((cut) => cut.id === id);
  const cut = cuts[index];
  if (!cut) return null;
  return <VerbMenu className="clause-verbs" word={words.more} label={words.clauseVerbs(name)} verbs={verbsOf(cut, index, cuts.length)} />;
}

type Changes = typeof import("../describe/changeCuts");

/** An action that makes one of the changes, fetched when the page was first touched. */
function making(changeOf: (changes: Changes) => Change): () => void {
  return () => void import("../describe/changeCuts").then((changes) => change(changeOf(changes)));
}

function verbsOf(cut: Cut, index: number, count: number): Verb[] {
  const { id } = cut;
  const { verbs } = clauseWords;
  const free = cut.kind === "shaped" && cut.profile.shape === "free" ? cut.profile : null;
  const ofLegs: Verb[] = free
    ? [
        { label: verbs.addLeg, act: making((by) => (job) => by.legOfCutAdded(job, id)) },
        { label: verbs.removeLeg, act: making((by) => (job) => by.legOfCutRemoved(job, id)), disabled: free.legs.length < 2 },
      ]
    : [];
  return [
    ...ofLegs,
    { label: verbs.up, act: making((by) => (job) => by.cutMoved(job, id, -1)), disabled: index === 0 },
    { label: verbs.down, act: making((by) => (job) => by.cutMoved(job, id, 1)), disabled: index === count - 1 },
    { label: verbs.copy, act: making((by) => (job) => by.cutCopied(job, id)) },
    { label: cut.on ? verbs.off : verbs.on, act: making((by) => (job) => by.cutSwitched(job, id)) },
    { label: verbs.remove, act: making((by) => (job) => by.cutRemoved(job, id)) },
  ];
}
