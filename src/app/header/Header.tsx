import { useRef } from "react";
import { saveNow } from "../files/saveNow";
import { openPanel } from "../screen/panel";
import { useRollUpPlace } from "../rollUp/place";
import { VerbMenu, type Verb } from "../description/VerbMenu";
import { close, small, useMedia } from "../screen/useMedia";
import { beginNew } from "../start/beginNew";
import { sayNotFetched } from "../store/changing";
import { useEarlier } from "../store/earlier";
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
  const isClose = useMedia(close);
  const isSmall = useMedia(small);
  const { verbs } = words;
  const often: readonly Verb[] = [
    { label: verbs.new, act: beginNew },
    { label: verbs.open, act: () => file.current?.click() },
    { label: verbs.save, act: saveNow },
  ];
  const seldom: readonly Verb[] = [
    { label: verbs.examples, act: () => openPanel("examples") },
    ...(anyEarlier ? [{ label: verbs.earlier, act: () => openPanel("earlier") }] : []),
    ...(onBoard ? [] : [{ label: verbs.rollUp, act: () => openPanel("roll-up") }]),
  ];
  const print = { label: verbs.print, act: () => openPanel("print") };
  const settings = { label: verbs.settings, act: () => openPanel("settings") };
  const inRow = isSmall ? [print] : isClose ? [...often, print] : [...often, ...seldom, print, settings];
  const inMenu = isSmall ? [...often, ...seldom, settings] : isClose ? [...seldom, settings] : [];
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
      <HistoryVerbs />
      <PurposeSwitch />
      <nav className="verbs" aria-label={words.verbsLabel}>
        {inRow.map(({ label, act }) => (
          <button key={label} type="button" className="verb" onClick={act}>
            {label}
          </button>
        ))}
        {inMenu.length > 0 && <VerbMenu className="header-more" word={words.moreVerbs} verbs={inMenu} />}
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
      </nav>
    </header>
  );
}
