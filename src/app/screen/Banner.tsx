import { saveNow } from "../files/saveNow";
import { useNewer } from "../offline/workOffline";
import { selectMessage } from "../store/select";
import { changing } from "../store/changing";
import { say, useApp, type Message } from "../store/store";
import { words } from "../words/interface";
import { FaultSentence } from "./FaultSentence";

/** One thing the reader must know, with what can be done about it. */
export function Banner() {
  const message = useApp(selectMessage);
  const reload = useNewer((newer) => newer.reload);
  return (
    <div className="banner-place" role="status">
      {message && (
        <div className="banner" data-grave={message.kind !== "set-aside" || undefined}>
          <p>
            {sentence(message)} {"fault" in message && <FaultSentence fault={message.fault} />}
          </p>
          {message.kind === "set-aside" && (
            <button type="button" className="verb" onClick={() => changing((by) => by.replaceJob(message.job, words.message.bringBack))}>
              {words.message.bringBack}
            </button>
          )}
          {message.kind === "no-storage" && (
            <button type="button" className="verb" onClick={saveNow}>
              {words.message.saveToFile}
            </button>
          )}
          <button type="button" className="verb" onClick={() => say(null)}>
            {words.message.dismiss}
          </button>
        </div>
      )}
      {reload && (
        <div className="banner">
          <p>{words.message.newer}</p>
          <button type="button" className="verb" onClick={reload}>
            {words.message.reload}
          </button>
        </div>
      )}
    </div>
  );
}

function sentence(message: Message): string {
  const { message: said } = words;
  switch (message.kind) {
    case "unreadable-autosave":
      return said.unreadableAutosave;
    case "no-storage":
      return said.noStorage;
    case "open-elsewhere":
      return said.openElsewhere;
    case "not-fetched":
      return said.notFetched;
    case "refused":
      return said.refused;
    case "file":
      return said.file(message.name);
    case "set-aside":
      return said.setAside(message.job.title || words.untitled);
  }
}
