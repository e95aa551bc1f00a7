import { useMemo } from "react";
import { developJob, type Job } from "../../core/index";
import { pictorial } from "../../drawing/pictorial";
import { pictorialSheet } from "../../drawing/pictorialSheet";
import { isometric } from "../../drawing/pictorialSight";
import { viewBox } from "../../output/svg/viewBox";
import { ItemView } from "../board/ItemView";
import { changing } from "../store/changing";
import "../theme/rollUp.css";
import "../theme/start.css";
import { startWords } from "../words/start";
import { focusField } from "./focusField";
import { begun, startPieces, type StartPiece } from "./startPieces";

/** The window of a drawing, sheet mm; a sheet mm is three CSS pixels. */
const window = { width: 29, height: 26 };
const px = 3;

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
  const items = useMemo(() => drawingOf(begun(job, piece)), [job, piece]);
  if (!items) return null;
  return (
    <li>
      <button type="button" className="start-piece" onClick={() => begin(piece)}>
        <svg className="piece-drawing" aria-hidden="true" width={window.width * px} height={window.height * px} viewBox={viewBox({ left: 0, right: window.width, bottom: 0, top: window.height })}>
          {items.map((item, i) => (
            <ItemView key={i} item={item} />
          ))}
        </svg>
        <span>{startWords.pieces[piece]}</span>
      </button>
    </li>
  );
}

function drawingOf(job: Job) {
  const outcome = developJob(job);
  const piece = outcome.ok ? outcome.development.pieces[0] : undefined;
  if (!piece) return null;
  const { projection } = job.drawing;
  return pictorial(pictorialSheet(piece, projection), { fraction: 1, sight: isometric(projection), ...window }).items;
}

/** The piece becomes the description; its first number is the next to be typed. */
function begin(piece: StartPiece): void {
  changing((by) => {
    by.change((job) => begun(job, piece), startWords.pieces[piece]);
    focusField('[data-clause^="cut:"] input');
  });
}
