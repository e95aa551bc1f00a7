import { parseJob } from "../../core/index";
import { EXAMPLES, type Example } from "../examples/index";
import { closePanel } from "../screen/panel";
import { Panel } from "../screen/Panel";
import { replaceJob } from "../store/changes";
import { panelWords } from "../words/panels";

/** The ready jobs, each with the story it comes from. */
export function ExamplesPanel() {
  return (
    <Panel title={panelWords.examples.title}>
      <p>{panelWords.examples.text}</p>
      <ul className="examples">
        {EXAMPLES.map((example) => (
          <li key={example.id}>
            <button type="button" className="example" onClick={() => open(example)}>
              <strong>{example.data.title}</strong>
              <span>{example.data.note}</span>
            </button>
          </li>
        ))}
      </ul>
    </Panel>
  );
}

function open(example: Example): void {
  const read = parseJob(example.data);
  if (!read.ok) throw new Error(`the example ${example.id} is no job`);
  replaceJob(read.job, example.data.title);
  closePanel();
}
