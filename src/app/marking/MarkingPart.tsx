import { useRef } from "react";
import { MarginHelp } from "../help/MarginHelp";
import { checkHelp } from "../words/help/check";
import { markingWords } from "../words/marking";
import { SchemeEditor } from "./SchemeEditor";

/** What is allowed and what marks are given for, in the margin of a lesson. */
export function MarkingPart() {
  const part = useRef<HTMLElement>(null);
  return (
    <section aria-label={markingWords.title} ref={part}>
      <h2>{markingWords.title}</h2>
      <p className="step-fresh">{markingWords.explained}</p>
      <SchemeEditor />
      <MarginHelp margin={part} table={checkHelp} />
    </section>
  );
}
