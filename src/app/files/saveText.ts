/** Hands a text to the reader as a file to keep; nothing leaves the device. */
export function saveText(name: string, type: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers begin the download only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
