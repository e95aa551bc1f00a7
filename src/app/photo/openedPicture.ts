import type { Pixels } from "../../core/index";
import { LIMIT, pictureFault, type PictureFault } from "./pictureFault";

export type OpenedPicture =
  | { readonly ok: true; readonly pixels: Pixels; /** The same picture as it is shown. */ readonly shown: Blob }
  | { readonly ok: false; readonly fault: PictureFault };

/** Pixels that are worked with: a larger picture is made smaller. */
export const WORKED = 12e6;

/** Decodes a picture, upright as it was taken, at most `WORKED` pixels of it. Runs in a worker. */
export async function openedPicture(file: Blob): Promise<OpenedPicture> {
  const fault = pictureFault(file.size, new Uint8Array(await file.slice(0, LIMIT.header).arrayBuffer()));
  if (fault) return { ok: false, fault };
  if (!("OffscreenCanvas" in self) || !("createImageBitmap" in self)) return { ok: false, fault: { kind: "not-here" } };
  const decoded = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (!decoded) return { ok: false, fault: { kind: "damaged" } };
  const part = Math.min(1, Math.sqrt(WORKED / (decoded.width * decoded.height)));
  const [width, height] = [Math.round(decoded.width * part), Math.round(decoded.height * part)];
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) return { ok: false, fault: { kind: "not-here" } };
  // A picture with see-through parts lies on white paper.
  context.fillStyle = "white";
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = "high";
  context.drawImage(decoded, 0, 0, width, height);
  decoded.close();
  const { data } = context.getImageData(0, 0, width, height);
  return { ok: true, pixels: { width, height, data }, shown: await canvas.convertToBlob({ type: "image/jpeg", quality: 0.92 }) };
}
