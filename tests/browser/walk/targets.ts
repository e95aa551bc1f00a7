import type { Page } from "@playwright/test";
import type { RandomSource } from "../../support/randomSource";

// What on the page a hand could go for now, and where it stands.

export interface Target {
  readonly x: number;
  readonly y: number;
  /** For the account of a walk. */
  readonly name: string;
}

/** One of the elements that can be seen, brought into sight; null when there is none. The choice is the source's alone. */
export async function oneOf(page: Page, source: RandomSource, selector: string): Promise<Target | null> {
  const choice = source.unit();
  return page.evaluate(
    ({ selector, choice }) => {
      const all = [...document.querySelectorAll<HTMLElement>(selector)].filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width > 0 && height > 0 && one.checkVisibility({ visibilityProperty: true, opacityProperty: true });
      });
      const modal = document.querySelector("dialog[open]");
      const within = modal ? all.filter((one) => modal.contains(one)) : all;
      const one = within[Math.floor(choice * within.length)];
      if (!one) return null;
      one.scrollIntoView({ block: "nearest", inline: "nearest" });
      const { left, top, width, height } = one.getBoundingClientRect();
      const name = one.getAttribute("data-field") ?? one.getAttribute("data-handle") ?? one.getAttribute("aria-label") ?? one.textContent ?? one.className;
      return { x: left + width / 2, y: top + height / 2, name: name.trim().slice(0, 60) || one.tagName };
    },
    { selector, choice },
  );
}

/** A place anywhere within an element, brought into sight; null when something lies over the page. */
export async function somewhere(page: Page, source: RandomSource, selector: string): Promise<Target | null> {
  const parts = { x: source.unit(), y: source.unit() };
  return page.evaluate(
    ({ selector, parts }) => {
      const one = document.querySelector(selector);
      if (!one || document.querySelector("dialog[open]")) return null;
      one.scrollIntoView({ block: "nearest" });
      const { left, top, width, height } = one.getBoundingClientRect();
      return { x: Math.round(left + parts.x * width), y: Math.round(top + parts.y * height), name: selector };
    },
    { selector, parts },
  );
}
