import { readJobText, type Job } from "../../core/index";
import { closePanel } from "../screen/panel";
import { Panel } from "../screen/Panel";
import { lookForEarlier, useEarlier } from "../store/earlier";
import { autosave, replaceJob } from "../store/changes";
import { words } from "../words/interface";
import { panelWords } from "../words/panels";

/** Works of pages that were closed; one pressed is taken up again. */
export function EarlierPanel() {
  const slots = useEarlier((earlier) => earlier.slots);
  const { earlier: said } = panelWords;
  return (
    <Panel title={said.title}>
      <p>{said.text}</p>
      <ul className="examples">
        {slots.map(({ key, savedAt, text }) => {
          const read = readJobText(text);
          return (
            read.ok && (
              <li key={key}>
                <button type="button" className="example" onClick={() => takeUp(read.job)}>
                  <strong>{read.job.title || words.untitled}</strong>
                  {savedAt > 0 && <span>{said.saved(new Date(savedAt))}</span>}
                  <span>{read.job.note}</span>
                </button>
              </li>
            )
          );
        })}
      </ul>
    </Panel>
  );
}

function takeUp(job: Job): void {
  replaceJob(job, words.done(words.verbs.earlier, job.title || words.untitled));
  closePanel();
  void lookForEarlier(autosave.slot.key());
}
