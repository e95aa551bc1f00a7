import { pixelsPerMm, rectifiedPicture, type Pixels } from "../../core/index";
import type { PictureAnswer, PictureQuestion } from "./pictureMessages";
import { openedPicture } from "./openedPicture";

// Beside the page: decodes the picture and keeps its pixels, and makes the rectified picture of them, so that the page never waits.

/** What a worker has of its own scope here. */
interface Scope {
  addEventListener(type: "message", listener: (event: MessageEvent<PictureQuestion>) => void): void;
  postMessage(answer: PictureAnswer): void;
}

const scope = self as unknown as Scope;

let pixels: Pixels | null = null;

scope.addEventListener("message", ({ data }) => {
  void answer(data).then((said) => scope.postMessage(said), () => scope.postMessage({ number: data.number, kind: "fault", fault: { kind: "damaged" } }));
});

async function answer(question: PictureQuestion): Promise<PictureAnswer> {
  const { number } = question;
  if (question.kind === "open") {
    const opened = await openedPicture(question.file);
    if (!opened.ok) return { number, kind: "fault", fault: opened.fault };
    pixels = opened.pixels;
    return { number, kind: "opened", blob: opened.shown, width: pixels.width, height: pixels.height };
  }
  if (!pixels) throw new Error("no picture is open");
  const { rectification, region } = question;
  const straight = rectifiedPicture(pixels, rectification, region, pixelsPerMm(rectification, region));
  const canvas = new OffscreenCanvas(straight.width, straight.height);
  const context = canvas.getContext("2d");
  if (!context) throw new Error("no canvas");
  context.putImageData(new ImageData(straight.data as Uint8ClampedArray<ArrayBuffer>, straight.width, straight.height), 0, 0);
  return { number, kind: "rectified", blob: await canvas.convertToBlob({ type: "image/jpeg", quality: 0.9 }) };
}
