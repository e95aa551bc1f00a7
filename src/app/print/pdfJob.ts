import { create } from "zustand";
import type { Page } from "../../drawing/sheets/page";
import { saveBlob } from "../files/saveBlob";
import { makePdf } from "./makePdf";

// The PDF that is being made: one at a time.

export interface PdfJob {
  readonly state: "idle" | "making" | "failed";
  /** Pages written, of all. */
  readonly done: number;
  readonly total: number;
}

const idle: PdfJob = { state: "idle", done: 0, total: 0 };

export const usePdfJob = create<PdfJob>()(() => idle);

let running: AbortController | null = null;

/** Makes the file and hands it to the reader; a file still being made is given up. What goes wrong is the state "failed". Whether it was handed over. */
export async function startPdf(pages: readonly Page[], { title, fileName }: { readonly title: string; readonly fileName: string }): Promise<boolean> {
  cancelPdf();
  const own = new AbortController();
  running = own;
  const show = (job: PdfJob) => {
    if (running === own) usePdfJob.setState(job);
  };
  show({ state: "making", done: 0, total: pages.length });
  try {
    const blob = await makePdf(pages, { title, signal: own.signal, onPage: (done) => show({ state: "making", done, total: pages.length }) });
    const saved = blob !== null && !own.signal.aborted;
    if (saved) saveBlob(fileName, blob);
    show(idle);
    return saved;
  } catch {
    show({ ...idle, state: "failed" });
    return false;
  }
}

/** Gives up the file that is being made: nothing is handed over. */
export function cancelPdf(): void {
  running?.abort();
  running = null;
  usePdfJob.setState(idle);
}
