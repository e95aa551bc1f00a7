import { useMemo } from "react";
import { parseJob, type Job } from "../../core/index";
import { isometric } from "../../drawing/pictorial/pictorialSight";
import { EXAMPLES, type Example } from "../examples/index";
import { closePanel } from "../screen/panel";
import { Panel } from "../screen/Panel";
import { PieceDrawing } from "../start/PieceDrawing";
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
              <ExampleDrawing example={example} />
              <strong>{example.data.title}</strong>
              <span>{example.data.note}</span>
            </button>
          </li>
        ))}
      </ul>
    </Panel>
  );
}

function ExampleDrawing({ example }: { example: Example }) {
  const job = useMemo(() => jobOf(example), [example]);
  const sight = useMemo(() => isometric(job.drawing.projection), [job]);
  return <PieceDrawing job={job} sight={sight} />;
}

function open(example: Example): void {
  replaceJob(jobOf(example), example.data.title);
  closePanel();
}

function jobOf({ id, data }: Example): Job {
  const read = parseJob(data);
  if (!read.ok) throw new Error(`the example ${id} is no job`);
  return read.job;
}
