import { CHOICES, type DrawnScale, type Job } from "../../../core/index";
import { scaleText } from "../../../drawing/sheets/scales";

/** The name of a scale of sheets (paper mm a real mm); null for sheets without one. */
export function sheetScaleOf(scale: number | null): DrawnScale | null {
  return scale === null ? null : (CHOICES.drawnScale.of.find((one) => one === scaleText(scale)) ?? null);
}

/** The job as it is drawn by hand on sheets at this scale. */
export function onSheets(job: Job, sheetScale: DrawnScale | null): Job {
  return { ...job, drawing: { ...job.drawing, sheetScale } };
}
