import { useFormat } from "../quantity/useFormat";
import { selectMessage } from "../store/select";
import { replaceJob, say, useApp, type Message } from "../store/store";
import type { Format } from "../quantity/format";
import { faultSentence } from "../words/fault";
import { words } from "../words/interface";

/** One thing the reader must know, with what can be done about it. */
export function Banner() {
  const message = useApp(selectMessage);
  const format = useFormat();
  return (
    <div className="banner-place" role="status">
      {message && (
        <div className="banner">
          <p>{sentence(message, format)}</p>
          {message.kind === "set-aside" && (
            <button type="button" className="verb" onClick={() => replaceJob(message.job)}>
              {words.message.bringBack}
            </button>
          )}
          <button type="button" className="verb" onClick={() => say(null)}>
            {words.message.dismiss}
          </button>
        </div>
      )}
    </div>
  );
}

function sentence(message: Message, format: Format): string {
  const { message: said } = words;
  switch (message.kind) {
    case "unreadable-autosave":
      return said.unreadableAutosave;
    case "no-storage":
      return said.noStorage;
    case "refused":
      return `${said.refused} ${faultSentence(message.fault, format)}`;
    case "file":
      return `${said.file(message.name)} ${faultSentence(message.fault, format)}`;
    case "set-aside":
      return said.setAside(message.job.title || words.untitled);
  }
}
