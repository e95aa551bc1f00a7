import { useMemo, useRef } from "react";
import { sentenceText } from "../describe/sentenceText";
import { useFormat } from "../quantity/useFormat";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { teachWords as said } from "../words/teach";
import { jump } from "./lead";
import { Player } from "./Player";
import { drawnStation, useTeaching } from "./teaching";
import { useAddress, useLesson, type Lesson } from "./useLesson";
import { useLeadingKeys, usePlaying } from "./usePlaying";
import "../theme/teach.css";

/** In place of the description: what the step does and why, the player, and the steps to jump to. */
export function TeachMargin() {
  const margin = useRef<HTMLElement>(null);
  const lesson = useLesson();
  useAddress(lesson);
  usePlaying(lesson);
  useLeadingKeys();
  return (
    <section id="description" className="description teach" aria-label={said.title} tabIndex={-1} ref={margin}>
      {lesson && <StepText lesson={lesson} />}
      {lesson && <Player lesson={lesson} margin={margin} />}
      {lesson && <StepList lesson={lesson} />}
    </section>
  );
}

function StepText({ lesson }: { lesson: Lesson }) {
  const { steps, step, index } = lesson;
  const each = useTeaching((state) => state.each);
  const station = drawnStation(steps, lesson, each);
  return (
    <div className="step-text" aria-live="polite">
      <p className="step-count">{said.count(index + 1, steps.length)}</p>
      <h2>{step.title}</h2>
      {index === 0 && <Exercise />}
      <p>{step.text}</p>
      {station !== null && <p className="step-station">{step.parts[station]?.text}</p>}
      <p className="step-fresh">
        {said.fresh}: {step.fresh}.
      </p>
    </div>
  );
}

/** The description as it stands, its figures frozen: the text of the exercise. */
function Exercise() {
  const job = useApp(selectJob);
  const format = useFormat();
  const text = useMemo(() => sentenceText(job, ({ value, quantity }) => format.field(value, quantity) + (quantity === "angle" ? "°" : ""), format.trade), [job, format]);
  return (
    <p className="exercise">
      {said.exercise}: {text}
    </p>
  );
}

function StepList({ lesson: { steps, index } }: { lesson: Lesson }) {
  return (
    <nav className="step-list" aria-label={said.steps}>
      <ol>
        {steps.map((step, i) => (
          <li key={step.name}>
            <button type="button" className="verb" aria-current={i === index ? "step" : undefined} onClick={() => jump(i)}>
              {step.title}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
