import { saveBlob } from "./saveBlob";

/** Hands a text to the reader as a file to keep. */
export function saveText(name: string, type: string, text: string): void {
  saveBlob(name, new Blob([text], { type: `${type};charset=utf-8` }));
}
