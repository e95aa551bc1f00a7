import { useEffect, useState, type RefObject } from "react";

/** Whether an element fills the screen, and the way in and out. Where the browser gives no full screen it fills the window; Escape leaves. */
export function useFullScreen(of: RefObject<HTMLElement | null>): readonly [boolean, () => void] {
  const [full, setFull] = useState(false);
  useEffect(() => {
    const element = of.current;
    if (!element || !full) return;
    element.dataset.full = "true";
    const onChange = () => setFull(document.fullscreenElement === element);
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "Escape") setFull(false);
    };
    document.addEventListener("fullscreenchange", onChange);
    document.addEventListener("keydown", onKey);
    return () => {
      delete element.dataset.full;
      document.removeEventListener("fullscreenchange", onChange);
      document.removeEventListener("keydown", onKey);
      if (document.fullscreenElement === element) void document.exitFullscreen();
    };
  }, [of, full]);
  const toggle = () => {
    setFull(!full);
    // Refused, or not to be had: the window is filled all the same.
    if (!full) void of.current?.requestFullscreen?.().catch(() => undefined);
  };
  return [full, toggle];
}
