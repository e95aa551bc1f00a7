import type { Job } from "../../../core/index";
import { changing } from "../../store/changing";
import { useApp } from "../../store/store";
import { sheetsWords } from "../../words/sheets";
import { onSheets, sheetScaleOf } from "./sheetScale";

/** Keeps in the job on the board at which scale its sheets were made, so that drawings on them are checked at it; another job that is there by now is left alone. */
export function rememberScale(of: Job, scale: number | null): void {
  const sheetScale = sheetScaleOf(scale);
  const { job } = useApp.getState().development;
  if (sheetScale === null || sheetScale === job.drawing.sheetScale || piecesOf(job) !== piecesOf(of)) return;
  changing((by) => by.change((now) => onSheets(now, sheetScale), sheetsWords.sheetScale));
}

function piecesOf({ part, development, exercise }: Job): string {
  return JSON.stringify([part, development, exercise]);
}
