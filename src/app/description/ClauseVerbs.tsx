import type { Cut } from "../../core/index";
import { useUnhurried } from "../board/useUnhurried";
import type { Change } from "../store/attempt";
import { changing, sayNotFetched } from "../store/changing";
import { clauseWords } from "../words/clauses";
import { words } from "../words/interface";
import { VerbMenu, type Verb } from "./VerbMenu";

/** The verbs of one cut. */
export function ClauseVerbs({ id, name }: { id: string; name: string }) {
  const cuts = useUnhurried((state) => state.development.job.part.cuts);
  const index = cuts.findIndex((cut) => cut.id === id);
  const cut = cuts[index];
  if (!cut) return null;
  return <VerbMenu className="clause-verbs" word={words.more} label={words.clauseVerbs(name)} verbs={verbsOf(cut, name, index, cuts.length)} />;
}

type CutChanges = typeof import("../describe/changeCuts");

function verbsOf(cut: Cut, name: string, index: number, count: number): Verb[] {
  const { id } = cut;
  /** A verb that makes one of the changes, fetched when the page was first touched. */
  const verb = (label: string, changeOf: (cuts: CutChanges) => Change, disabled = false): Verb => ({
    label,
    act: () => void import("../describe/changeCuts").then((cuts) => changing((by) => by.change(changeOf(cuts), words.done(label, name))), sayNotFetched),
    disabled,
  });
  const { verbs } = clauseWords;
  const free = cut.kind === "shaped" && cut.profile.shape === "free" ? cut.profile : null;
  const ofLegs: Verb[] = free
    ? [
        verb(verbs.addLeg, (by) => (job) => by.legOfCutAdded(job, id)),
        verb(verbs.removeLeg, (by) => (job) => by.legOfCutRemoved(job, id), free.legs.length < 2),
      ]
    : [];
  return [
    ...ofLegs,
    verb(verbs.up, (by) => (job) => by.cutMoved(job, id, -1), index === 0),
    verb(verbs.down, (by) => (job) => by.cutMoved(job, id, 1), index === count - 1),
    verb(verbs.copy, (by) => (job) => by.cutCopied(job, id)),
    verb(cut.on ? verbs.off : verbs.on, (by) => (job) => by.cutSwitched(job, id)),
    verb(verbs.remove, (by) => (job) => by.cutRemoved(job, id)),
  ];
}
