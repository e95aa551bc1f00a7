import { useRef, useState, useEffect, type RefObject } from "react";
import { useFullScreen } from "../board/moving/useFullScreen";
import { usePurpose } from "../store/purpose";
import { useApp } from "../store/store";
import { teachWords as said } from "../words/teach";
import { readAddress, writeAddress } from "./address";
import { jump, move, play, setEach } from "./lead";
import { packJob } from "./packedJob";
import type { Lesson } from "./useLesson";
import { moved, speeds, useTeaching } from "./teaching";

interface Props {
  readonly lesson: Lesson;
  readonly margin: RefObject<HTMLElement | null>;
}

/** Back, play and next, and how the lesson is played and drawn. */
export function Player({ lesson, margin }: Props) {
  const { playing, each, speed, way } = useTeaching();
  const ends = ([-1, 1] as const).map((by) => moved(lesson, by, lesson.steps, each) === null);
  const [full, toggleFull] = useLargeScreen(margin);
  const by = (way: 1 | -1) => () => {
    useTeaching.setState({ playing: false });
    move(way);
  };
  return (
    <div className="player" role="group" aria-label={said.player} title={said.keys}>
      <div className="player-verbs">
        <Verb word={said.back} act={by(-1)} idle={ends[0]} />
        <Verb word={playing ? said.pause : said.play} act={() => play(!playing)} />
        <Verb word={said.next} act={by(1)} idle={ends[1]} />
        <Verb word={full ? said.leaveFull : said.full} act={toggleFull} />
        <CopyLink />
      </div>
      <div className="player-choices">
        <span className="step-choice">
          <Choice label={said.step} value={lesson.step.name} of={Object.fromEntries(lesson.steps.map(({ name, title }, i) => [name, `${i + 1}. ${title}`]))} choose={(name) => jump(lesson.steps.findIndex((step) => step.name === name))} />
        </span>
        <label>
          <input type="checkbox" checked={each} onChange={(event) => setEach(event.target.checked)} />
          {said.each}
        </label>
        <Choice label={said.speed} value={speed} of={Object.fromEntries(speeds.map((one) => [one, said.speeds[one]]))} choose={(one) => useTeaching.setState({ speed: speeds.find((other) => other === one) ?? "usual" })} />
        <Choice label={said.way} value={way} of={said.ways} choose={(one) => useTeaching.setState({ way: one === "hand" ? "hand" : "screen" })} />
      </div>
    </div>
  );
}

/** Full screen for the board and the margin together, lettered for a room. */
function useLargeScreen(margin: Props["margin"]): readonly [boolean, () => void] {
  const desk = useRef<HTMLElement | null>(null);
  useEffect(() => {
    desk.current = margin.current?.closest<HTMLElement>(".desk") ?? null;
  }, [margin]);
  const [full, toggle] = useFullScreen(desk);
  useEffect(() => {
    usePurpose.setState({ large: full });
    return () => usePurpose.setState({ large: false });
  }, [full]);
  return [full, toggle];
}

function CopyLink() {
  const [told, tell] = useState("");
  const copy = () => void copyLink().then(() => tell(said.linkCopied), () => tell(said.linkRefused));
  return (
    <>
      <Verb word={said.link} act={copy} />
      <span className="told" aria-live="polite">
        {told}
      </span>
    </>
  );
}

/** Puts the address of the step on the clipboard, with the job, so that it opens on any device. */
async function copyLink(): Promise<void> {
  const here = readAddress(window.location.hash);
  const link = new URL(window.location.href);
  link.hash = writeAddress({ ...(here ?? { step: "data", station: null, way: "screen" }), job: await packJob(useApp.getState().development.job) });
  await navigator.clipboard.writeText(link.href);
}

/** A verb with nothing to do keeps its place and the focus. */
function Verb({ word, act, idle = false }: { word: string; act: () => void; idle?: boolean | undefined }) {
  return (
    <button type="button" className="verb" aria-disabled={idle} onClick={act}>
      {word}
    </button>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly of: Readonly<Record<string, string>>;
  readonly choose: (value: string) => void;
}

function Choice({ label, value, of, choose }: ChoiceProps) {
  return (
    <label>
      {label}{" "}
      <select className="choice" value={value} onChange={(event) => choose(event.target.value)}>
        {Object.entries(of).map(([name, text]) => (
          <option key={name} value={name}>
            {text}
          </option>
        ))}
      </select>
    </label>
  );
}
