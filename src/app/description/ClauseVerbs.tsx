import type { Cut } from "../../core/index";
import type { Change } from "../store/attempt";
import { changing, sayNotFetched } from "../store/changing";
import { useApp, type AppState } from "../store/store";
import { words } from "../words/interface";
import { verbWords } from "../words/verbs";
import { VerbMenu, type Verb } from "./VerbMenu";

/** The verbs of one cut. */
export function ClauseVerbs({ id, name }: { id: string; name: string }) {
  const index = useApp((state) => cutsOf(state).findIndex((cut) => cut.id === id));
  const count = useApp((state) => cutsOf(state).length);
  const on = useApp((state) => cutsOf(state)[index]?.on);
  const legs = useApp((state) => legsOf(cutsOf(state)[index]));
  if (on === undefined) return null;
  return <VerbMenu className="clause-verbs" word={verbWords.more} label={verbWords.ofClause(name)} verbs={verbsOf({ id, name, index, count, on, legs })} />;
}

const cutsOf = (state: AppState) => state.development.job.part.cuts;

/** How many legs a free profile has; null for any other cut. */
function legsOf(cut: Cut | undefined): number | null {
  return cut?.kind === "shaped" && cut.profile.shape === "free" ? cut.profile.legs.length : null;
}

/** What the verbs of a cut depend on. */
interface CutPlace {
  readonly id: string;
  readonly name: string;
  /** Which of `count` cuts it is. */
  readonly index: number;
  readonly count: number;
  readonly on: boolean;
  readonly legs: number | null;
}

type CutChanges = typeof import("../describe/changeCuts");

function verbsOf({ id, name, index, count, on, legs }: CutPlace): Verb[] {
  /** A verb that makes one of the changes, fetched when the page was first touched. */
  const verb = (label: string, changeOf: (cuts: CutChanges) => Change, disabled = false): Verb => ({
    label,
    act: () => void import("../describe/changeCuts").then((cuts) => changing((by) => by.change(changeOf(cuts), words.done(label, name))), sayNotFetched),
    disabled,
  });
  const ofLegs: Verb[] = legs !== null
    ? [
        verb(verbWords.addLeg, (by) => (job) => by.legOfCutAdded(job, id)),
        verb(verbWords.removeLeg, (by) => (job) => by.legOfCutRemoved(job, id), legs < 2),
      ]
    : [];
  return [
    ...ofLegs,
    verb(verbWords.up, (by) => (job) => by.cutMoved(job, id, -1), index === 0),
    verb(verbWords.down, (by) => (job) => by.cutMoved(job, id, 1), index === count - 1),
    verb(verbWords.copy, (by) => (job) => by.cutCopied(job, id)),
    verb(on ? verbWords.off : verbWords.on, (by) => (job) => by.cutSwitched(job, id)),
    verb(verbWords.remove, (by) => (job) => by.cutRemoved(job, id)),
  ];
}
