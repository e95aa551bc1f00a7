import { useMemo, useRef } from "react";
import { sentenceText } from "../describe/sentenceText";
import { useFormat } from "../quantity/useFormat";
import { selectJob } from "../store/select";
import { useApp } from "../store/store";
import { teachWords as said } from "../words/teach";
import { later } from "../screen/later";
import { jump } from "./lead";
import { teachParts, useTeachPart } from "./part";
import { Player } from "./Player";
import { drawnStation, useTeaching } from "./teaching";
import { useAddress, useLesson, type Lesson } from "./useLesson";
import { useLeadingKeys, usePlaying } from "./usePlaying";
import "../theme/teach.css";

const SheetsPart = later(async () => (await import("./sheets/SheetsPart")).SheetsPart);
const MarkingPart = later(async () => (await import("../marking/MarkingPart")).MarkingPart);
const ClassPart = later(async () => (await import("../class/ClassPart")).ClassPart);

/** In place of the description: what the step does and why, the player, and the steps to jump to; or the sheets, or the class set. */
export function TeachMargin() {
  const margin = useRef<HTMLElement>(null);
  const lesson = useLesson();
  const part = useTeachPart((state) => state.part);
  useAddress(lesson);
  usePlaying(lesson);
  useLeadingKeys();
  return (
    <section id="description" className="description teach" aria-label={said.title} tabIndex={-1} ref={margin}>
      <Parts />
      {part === "sheets" && <SheetsPart />}
      {part === "marking" && <MarkingPart />}
      {part === "class" && <ClassPart />}
      {part === "steps" && lesson && <StepText lesson={lesson} />}
      {part === "steps" && lesson && <Player lesson={lesson} margin={margin} />}
      {part === "steps" && lesson && <StepList lesson={lesson} />}
    </section>
  );
}

/** What of teaching stands below. */
function Parts() {
  const part = useTeachPart((state) => state.part);
  const show = (one: typeof part) => {
    useTeaching.setState({ playing: false });
    useTeachPart.setState({ part: one });
  };
  return (
    <nav className="teach-parts" aria-label={said.parts.label}>
      {teachParts.map((one) => (
        <button key={one} type="button" className="verb" aria-current={one === part ? "page" : undefined} onClick={() => show(one)}>
          {said.parts[one]}
        </button>
      ))}
    </nav>
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
