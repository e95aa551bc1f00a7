import type { Cut } from "../../core/index";
import { cutCopied, cutMoved, cutRemoved, cutSwitched, legOfCutAdded, legOfCutRemoved } from "../describe/changeCuts";
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

function verbsOf(cut: Cut, index: number, count: number): Verb[] {
  const { id } = cut;
  const { verbs } = clauseWords;
  const free = cut.kind === "shaped" && cut.profile.shape === "free" ? cut.profile : null;
  const ofLegs: Verb[] = free
    ? [
        { label: verbs.addLeg, act: () => change((job) => legOfCutAdded(job, id)) },
        { label: verbs.removeLeg, act: () => change((job) => legOfCutRemoved(job, id)), disabled: free.legs.length < 2 },
      ]
    : [];
  return [
    ...ofLegs,
    { label: verbs.up, act: () => change((job) => cutMoved(job, id, -1)), disabled: index === 0 },
    { label: verbs.down, act: () => change((job) => cutMoved(job, id, 1)), disabled: index === count - 1 },
    { label: verbs.copy, act: () => change((job) => cutCopied(job, id)) },
    { label: cut.on ? verbs.off : verbs.on, act: () => change((job) => cutSwitched(job, id)) },
    { label: verbs.remove, act: () => change((job) => cutRemoved(job, id)) },
  ];
}
