import type { PaperRegion, Rectification } from "../../core/index";
import type { PictureAnswer, PictureQuestion } from "./pictureMessages";

// The worker that holds the picture, and what is asked of it. It lives as long as a picture is open.

let worker: Worker | null = null;
let asked = 0;

type Asked = PictureQuestion extends infer One ? (One extends PictureQuestion ? Omit<One, "number"> : never) : never;

/** Opens a picture file; the picture before is let go. */
export function askToOpen(file: Blob): Promise<PictureAnswer> {
  return ask({ kind: "open", file });
}

/** The picture of a region of the paper from straight above. */
export function askToRectify(rectification: Rectification, region: PaperRegion): Promise<PictureAnswer> {
  return ask({ kind: "rectify", rectification, region });
}

/** Lets the picture go. */
export function endPictureDesk(): void {
  worker?.terminate();
  worker = null;
}

/** Rejects when the worker cannot be fetched or breaks. */
function ask(question: Asked): Promise<PictureAnswer> {
  worker ??= new Worker(new URL("./pictureWorker.ts", import.meta.url), { type: "module" });
  const to = worker;
  const number = ++asked;
  return new Promise((resolve, reject) => {
    const ending = new AbortController();
    const { signal } = ending;
    to.addEventListener("message", ({ data }: MessageEvent<PictureAnswer>) => {
      if (data.number !== number) return;
      ending.abort();
      resolve(data);
    }, { signal });
    to.addEventListener("error", () => {
      ending.abort();
      if (worker === to) endPictureDesk();
      reject(new Error("the picture's worker broke"));
    }, { signal });
    to.postMessage({ ...question, number });
  });
}
