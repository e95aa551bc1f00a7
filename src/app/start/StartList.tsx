import { useMemo } from "react";
import { developJob, type Job } from "../../core/index";
import { changing } from "../store/changing";
import { startWords } from "../words/start";
import { focusField } from "./focusField";
import { PieceDrawing } from "./PieceDrawing";
import { begun, seenFrom, startPieces, type StartPiece } from "./startPieces";

/** For a pipe without a cut: pieces to begin with, drawn as they would come out. One that cannot be made of this pipe is left out. */
export function StartList({ job }: { job: Job }) {
  return (
    <section className="start" aria-label={startWords.title}>
      <p>{startWords.title}</p>
      <ul>
        {startPieces.map((piece) => (
          <Piece key={piece} job={job} piece={piece} />
        ))}
      </ul>
    </section>
  );
}

function Piece({ job, piece }: { job: Job; piece: StartPiece }) {
  const made = useMemo(() => begun(job, piece), [job, piece]);
  if (!useMemo(() => developJob(made).ok, [made])) return null;
  return (
    <li>
      <button type="button" className="start-piece" onClick={() => begin(piece)}>
        <PieceDrawing job={made} sight={seenFrom[piece]} />
        <span>{startWords.pieces[piece]}</span>
      </button>
    </li>
  );
}

/** The piece becomes the description; its first number is the next to be typed. */
function begin(piece: StartPiece): void {
  changing((by) => {
    by.change((job) => begun(job, piece), startWords.pieces[piece]);
    focusField('[data-clause^="cut:"] input');
  });
}
