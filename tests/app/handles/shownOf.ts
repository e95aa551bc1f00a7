import type { Shown } from "../../../src/app/board/camera";
import type { Job } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { developed } from "../../support/developed";

/** The board of the job as a small window shows it. */
export function shownOf(job: Job): Shown {
  const development = developed(job);
  const options = { width: 300, height: 200 };
  const drawn = board(development, options);
  return { development, fit: drawn, drawn, whole: drawn.bounds, view: drawn.bounds, size: options, px: 3, options };
}
