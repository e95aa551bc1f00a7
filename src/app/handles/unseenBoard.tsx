import { flushSync } from "react-dom";
import { createRoot } from "react-dom/client";
import { redrawn } from "../../drawing/board/board";
import { dragged } from "../../drawing/handles/dragged";
import { handles } from "../../drawing/handles/handles";
import { withValues } from "../../drawing/handles/withValues";
import type { Shown } from "../board/camera";
import { RunView } from "../board/RunView";
import { runsReuser } from "../board/runsReuser";
import { make } from "../store/attempt";

/** The board as it is shown, on a paper of its own that nobody sees: what is done there changes neither the job nor the page. */
export interface UnseenBoard {
  /** Drags one of its handles a little from where it stands; another and elsewhere for each number from 0 on. */
  readonly drag: (turn: number) => void;
  readonly clear: () => void;
}

export function unseenBoard({ development, drawn, options }: Shown): UnseenBoard {
  const all = handles(drawn, development);
  const paper = createRoot(document.createElementNS("http://www.w3.org/2000/svg", "svg"));
  const reusedRuns = runsReuser();
  return {
    drag(turn) {
      const handle = all[turn % all.length];
      if (!handle) return;
      // Sheet mm, different for the same handle the next time.
      const to = { x: handle.at.x + (turn % 5), y: handle.at.y + (turn % 3) };
      const { values } = dragged(handle, to, development, turn % 2 === 0);
      const made = make(withValues(development.job, handle.clause, values));
      if (!made.ok) return;
      const { items } = redrawn(drawn, made.development, options);
      flushSync(() => paper.render(reusedRuns(items).map((run) => <RunView key={run.key} run={run} />)));
    },
    clear: () => paper.render(null),
  };
}
