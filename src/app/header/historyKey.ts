/** What a key asks for: Ctrl or Cmd with Z undoes, with Shift and Z or with Y redoes. While text stands in a field that is not yet in the job, the browser's own undo applies. */
export function historyKey(event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey" | "target">): "undo" | "redo" | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  if (event.target instanceof Element && event.target.closest("[data-typed]")) return null;
  const key = event.key.toLowerCase();
  if (key === "z") return event.shiftKey ? "redo" : "undo";
  return key === "y" && !event.shiftKey ? "redo" : null;
}
