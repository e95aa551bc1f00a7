import { useMemo } from "react";
import { developJob, type Job } from "../../core/index";
import { pictorial } from "../../drawing/pictorial/pictorial";
import { pictorialSheet } from "../../drawing/pictorial/pictorialSheet";
import type { Sight } from "../../drawing/pictorial/pictorialSight";
import { viewBox } from "../../output/svg/viewBox";
import { ItemView } from "../board/ItemView";
import "../theme/rollUp.css";
import "../theme/start.css";

/** The window of a drawing, sheet mm; a sheet mm is three CSS pixels. */
const window = { width: 24, height: 26 };
const px = 3;

/** The finished piece of a job, small; nothing where it cannot be made. */
export function PieceDrawing({ job, sight }: { job: Job; sight: Sight }) {
  const items = useMemo(() => drawingOf(job, sight), [job, sight]);
  if (!items) return null;
  return (
    <svg className="piece-drawing" aria-hidden="true" width={window.width * px} height={window.height * px} viewBox={viewBox({ left: 0, right: window.width, bottom: 0, top: window.height })}>
      {items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </svg>
  );
}

function drawingOf(job: Job, sight: Sight) {
  const outcome = developJob(job);
  const piece = outcome.ok ? outcome.development.pieces[0] : undefined;
  return piece ? pictorial(pictorialSheet(piece, job.drawing.projection), { fraction: 1, sight, alone: true, ...window }).items : null;
}
