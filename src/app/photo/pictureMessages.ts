import type { PaperRegion, Rectification } from "../../core/index";
import type { PictureFault } from "./pictureFault";

// What the page asks the worker that holds the picture, and what it answers; answers carry the number of their question.

export type PictureQuestion =
  | { readonly number: number; readonly kind: "open"; readonly file: Blob }
  | { readonly number: number; readonly kind: "rectify"; readonly rectification: Rectification; readonly region: PaperRegion };

export type PictureAnswer =
  | { readonly number: number; readonly kind: "opened"; readonly blob: Blob; readonly width: number; readonly height: number }
  | { readonly number: number; readonly kind: "rectified"; readonly blob: Blob }
  | { readonly number: number; readonly kind: "fault"; readonly fault: PictureFault };
