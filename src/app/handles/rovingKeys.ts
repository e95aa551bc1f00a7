import type { KeyboardEvent } from "react";

/** Keys that lead on (1) and back (-1). */
type Ways = Readonly<Record<string, 1 | -1>>;

/**
 * Keys by which many buttons of one group are gone through, so that the group is one stop of the Tab key: those of `ways`, and Home and End.
 * `selector` finds the buttons.
 */
export function rovingKeys(selector: string, ways: Ways) {
  return (event: KeyboardEvent<HTMLElement>) => {
    const all = [...event.currentTarget.querySelectorAll<HTMLElement>(selector)];
    const now = all.findIndex((one) => one === document.activeElement);
    const way = ways[event.key];
    const next = event.key === "Home" ? 0 : event.key === "End" ? all.length - 1 : way === undefined ? -1 : (now + way + all.length) % all.length;
    if (now < 0 || next < 0) return;
    event.preventDefault();
    event.stopPropagation();
    all[next]?.focus();
  };
}
