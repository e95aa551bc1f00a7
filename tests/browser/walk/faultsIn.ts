import type { Page } from "@playwright/test";

/** What no page may ever show, wherever it stands: in a drawing's numbers, in text or in a field. Waits until the page has drawn. */
export async function faultsIn(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    const bad = /.{0,60}(?:\bNaN\b|Infinity|\bundefined\b|\[object ).{0,60}/;
    const fields = [...document.querySelectorAll<HTMLInputElement>("input, textarea")].map(({ value }) => value).join("\n");
    const found = [bad.exec(document.body.innerHTML)?.[0], bad.exec(fields)?.[0]].filter((one) => one !== undefined);
    const broken = document.querySelector(".drawing") ? [] : ["the drawing is gone"];
    return [...found, ...broken];
  });
}
