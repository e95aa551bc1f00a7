/** Hands a file to the reader to keep; nothing leaves the device. */
export function saveBlob(name: string, blob: Blob): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers begin the download only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
