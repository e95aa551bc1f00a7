import type { Job } from "../../core/index";
import { isEmpty, openedSheet, savedSheet } from "./sheet";
import { pieceKey, putSheet, sheetKey, useSheets } from "./sheets";

// Readings go into a saved job and come out of an opened one; on the board a job has none.

/** The job with the readings of its piece, or of the student in hand, if there are any. */
export function withReadings(job: Job): Job {
  const { all, student } = useSheets.getState();
  const sheet = all[sheetKey(job, student)];
  return { ...job, readings: sheet && !isEmpty(sheet) ? savedSheet(sheet) : null };
}

/** Puts the readings that came with a job in the fields of its piece. */
export function takeReadings(job: Job): void {
  const { readings } = job;
  if (readings) putSheet(pieceKey(job), () => openedSheet(readings));
}
