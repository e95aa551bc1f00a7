import { useMemo, type KeyboardEvent } from "react";
import type { Cut, Problem } from "../../core/index";
import { useUnhurried } from "../board/useUnhurried";
import { describe } from "../describe/describe";
import { clauseMemory } from "../describe/reusedClauses";
import { cutWords, type CutWord } from "../describe/cutWords";
import type { Clause } from "../describe/token";
import { useFormat } from "../quantity/useFormat";
import { switchHelp, useHelp } from "../help/helped";
import { afterTouch, later } from "../screen/later";
import { useTouch } from "../screen/touch";
import { narrow, useMedia } from "../screen/useMedia";
import { selectClause, selectDevelopment, selectSpelled } from "../store/select";
import { beginNew } from "../start/beginNew";
import { changing, sayNotFetched } from "../store/changing";
import { useApp } from "../store/store";
import { clauseWords } from "../words/clauses";
import { words } from "../words/interface";
import { ClauseView } from "./ClauseView";
import { NoteField } from "./NoteField";
import { VerbMenu } from "./VerbMenu";

const ShopPart = later(async () => (await import("./ShopPart")).ShopPart);
const ProofView = afterTouch(async () => (await import("./ProofView")).ProofView);

const StartList = later(async () => (await import("../start/StartList")).StartList);
const FieldHelp = later(async () => (await import("../help/FieldHelp")).FieldHelp);

const none: readonly Problem[] = [];
const reused = clauseMemory();

/** The job as sentences, edited in place. */
export function Description() {
  const { job, notices } = useUnhurried(selectDevelopment, "handle");
  const spelled = useApp(selectSpelled);
  const inHand = useApp(selectClause);
  const help = useHelp();
  const isNarrow = useMedia(narrow);
  const noticesOf = useMemo(() => byClause(notices, job.part.cuts), [notices, job]);
  const { trade } = useFormat();
  const clauses = useMemo(() => reused(describe(job, spelled, trade)), [job, spelled, trade]);
  const touched = useTouch((state) => state.touched);
  // Work taken up shows all it says at once.
  const changed = useApp((state) => state.development !== useApp.getInitialState().development);
  const view = (clause: Clause) => <ClauseView key={clause.id} clause={clause} inHand={clause.id === inHand} notices={noticesOf.get(clause.id) ?? none} />;
  const firstAfterCuts = clauses.findIndex((clause) => clause.part === "sheet");
  const verbs = cutWords.map((word) => ({ label: clauseWords.add[word], act: () => add(word) }));
  return (
    <section id="description" className="description" aria-label={words.description} tabIndex={-1} onKeyDown={helpKey}>
      <div className="description-page">
        <p className="unseen">{words.lengthsIn[job.units]}</p>
        <ul className="clauses">{clauses.slice(0, firstAfterCuts).map(view)}</ul>
        {job.part.cuts.length === 0 && <StartList job={job} />}
        <div className="description-verbs">
          <VerbMenu className="add-cut" word={clauseWords.add.verb} verbs={verbs} />
          <button type="button" className="verb explain" aria-pressed={help.on} aria-keyshortcuts="F1" title={words.explainTitle} onClick={switchHelp}>
            {words.explain}
          </button>
        </div>
        {isNarrow && help.on && !help.field && <FieldHelp field={null} />}
        <ul className="clauses">{clauses.slice(firstAfterCuts).map(view)}</ul>
        <div className="shop-part">{(touched || changed) && <ShopPart />}</div>
        {!changed && (
          <p className="first-words">
            {words.firstWords}{" "}
            <button type="button" className="verb" onClick={beginNew}>
              {words.beginOwn}
            </button>
          </p>
        )}
        <NoteField />
        {isNarrow && <ProofView />}
      </div>
      {!isNarrow && <ProofView />}
      {!isNarrow && help.on && <FieldHelp field={help.field} />}
    </section>
  );
}

/** F1 says what fields mean, or leaves off. */
function helpKey(event: KeyboardEvent): void {
  if (event.key !== "F1") return;
  event.preventDefault();
  switchHelp();
}

function add(word: CutWord): void {
  Promise.all([import("../describe/changeCuts"), import("../describe/newCut")]).then(
    ([{ cutAdded }, { newCut }]) => changing((by) => by.change((job) => cutAdded(job, newCut(job, word)), clauseWords.add[word])),
    sayNotFetched,
  );
}

function byClause(notices: readonly Problem[], cuts: readonly Cut[]): ReadonlyMap<string, readonly Problem[]> {
  const found = new Map<string, Problem[]>();
  for (const problem of notices) {
    const id = clauseOf(problem, cuts);
    found.set(id, [...(found.get(id) ?? []), problem]);
  }
  return found;
}

/** The clause a notice belongs to; what concerns the whole job stands at the pipe. */
function clauseOf(problem: Problem, cuts: readonly Cut[]): string {
  const index = /^part\.cuts\.(\d+)/.exec(problem.field)?.[1];
  const cut = index === undefined ? undefined : cuts[Number(index)];
  if (cut) return `cut:${cut.id}`;
  return problem.field === "part.thickness" ? "sheet" : "part";
}
