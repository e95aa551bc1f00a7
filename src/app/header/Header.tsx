import { useRef } from "react";
import { saveJob } from "../files/saveJob";
import { openPanel } from "../screen/panel";
import { useRollUpPlace } from "../rollUp/place";
import { changing, sayNotFetched } from "../store/changing";
import { useEarlier } from "../store/earlier";
import { useApp } from "../store/store";
import { words } from "../words/interface";
import { HistoryVerbs } from "./HistoryVerbs";
import { PurposeSwitch } from "./PurposeSwitch";
import { TitleField } from "./TitleField";
import { Wordmark } from "./Wordmark";

/** The name of the product, the title of the job and the verbs. */
export function Header() {
  const file = useRef<HTMLInputElement>(null);
  const onBoard = useRollUpPlace((place) => place.onBoard);
  const anyEarlier = useEarlier((earlier) => earlier.slots.length > 0);
  const { verbs } = words;
  return (
    <header className="header">
      <a className="skip" href="#description">
        {words.skip}
      </a>
      <h1 className="wordmark">
        <Wordmark />
        {words.product}
      </h1>
      <TitleField />
      <PurposeSwitch />
      <nav className="verbs" aria-label={words.verbsLabel}>
        <HistoryVerbs />
        <VerbButton word={verbs.new} act={() => changing((by) => by.newJob())} />
        <VerbButton word={verbs.open} act={() => file.current?.click()} />
        <input
          ref={file}
          className="unseen"
          type="file"
          accept=".json,application/json"
          aria-label={words.openFile}
          tabIndex={-1}
          onChange={(event) => {
            const [chosen] = event.target.files ?? [];
            // Cleared, so that the same file can be chosen again.
            event.target.value = "";
            if (chosen) import("../files/openFile").then(({ openFile }) => openFile(chosen), sayNotFetched);
          }}
        />
        <VerbButton word={verbs.save} act={() => saveJob(useApp.getState().development.job)} />
        <VerbButton word={verbs.examples} act={() => openPanel("examples")} />
        {anyEarlier && <VerbButton word={verbs.earlier} act={() => openPanel("earlier")} />}
        {!onBoard && <VerbButton word={verbs.rollUp} act={() => openPanel("roll-up")} />}
        <VerbButton word={verbs.print} act={() => openPanel("print")} />
        <VerbButton word={verbs.settings} act={() => openPanel("settings")} />
      </nav>
    </header>
  );
}

function VerbButton({ word, act }: { word: string; act: () => void }) {
  return (
    <button type="button" className="verb" onClick={act}>
      {word}
    </button>
  );
}
