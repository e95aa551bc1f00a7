import { markingWords } from "../words/marking";
import { SchemeEditor } from "./SchemeEditor";

/** What is allowed and what marks are given for, in the margin of a lesson. */
export function MarkingPart() {
  return (
    <section aria-label={markingWords.title}>
      <h2>{markingWords.title}</h2>
      <p className="step-fresh">{markingWords.explained}</p>
      <SchemeEditor />
    </section>
  );
}
