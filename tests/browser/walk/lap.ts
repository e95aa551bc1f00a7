import { readFile } from "node:fs/promises";
import type { Browser, Page } from "@playwright/test";
import { randomSource } from "../../support/randomSource";
import { faultsIn } from "./faultsIn";
import { nextStep } from "./steps";

// One lap of a walk: a fresh page, steps of a seeded hand, and undo back to the start.

/** Steps of a lap: few enough that undo, which keeps 200, reaches the start. */
const count = 60;

/** Milliseconds a page may take for one thing asked of it: a guard against hanging only. */
const patience = 30_000;

/** Steps told when something goes wrong. */
const told = 12;

/**
 * Walks a lap; always the same one for the same seed and number. Throws, with the last steps, when the page writes an error, shows what is no
 * number, or does not come back to the very job it began with and, by redo, to the one it ended with.
 */
export async function walkLap(browser: Browser, address: string, seed: number, lap: number): Promise<number> {
  const hasTouch = lap % 2 === 0;
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: "reduce", locale: "en-GB", hasTouch });
  context.setDefaultTimeout(patience);
  const page = await context.newPage();
  const fingers = hasTouch ? await context.newCDPSession(page) : null;
  const errors: string[] = [];
  const account: string[] = [];
  page.on("pageerror", (error) => errors.push(`thrown: ${error.message}\n${error.stack ?? ""}`));
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") errors.push(`console: ${message.text()}`);
  });
  // A chooser of files that is never answered, no printer, and nobody who keeps the page's files.
  page.on("filechooser", () => undefined);
  await page.addInitScript(() => {
    window.print = () => undefined;
    Object.defineProperty(Navigator.prototype, "serviceWorker", { value: undefined });
  });
  const check = async (expected: boolean, what: string) => {
    const faults = [...errors, ...(await answered(faultsIn(page)).catch(said)), ...(expected ? [] : [what])];
    if (faults.length === 0) return;
    throw new Error(`seed ${seed}, lap ${lap}, step ${account.length}: ${faults.join("\n")}\nlast steps:\n  ${account.slice(-told).join("\n  ")}`);
  };
  try {
    await open(page, address);
    const start = await saved(page);
    const source = randomSource(seed * 1000 + lap);
    while (account.length < count) {
      try {
        account.push((await answered(nextStep(source, hasTouch)({ page, source, fingers }))) ?? "nothing to do it with");
      } catch (error) {
        errors.push(...said(error));
      }
      await check(true, "");
    }
    await toRest(page);
    const end = await saved(page);
    const undone = await go(page, "Undo", account);
    await check((await saved(page)) === start, "undo did not lead back to the job at the start");
    await go(page, "Redo", account, undone);
    await check((await saved(page)) === end, "redo did not lead to the job at the end");
    return account.length;
  } finally {
    await context.close();
  }
}

/** What is asked of the page, unless it does not answer at all. */
async function answered<Answer>(asked: Promise<Answer>): Promise<Answer> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error("the page does not answer")), 2 * patience);
  });
  return Promise.race([asked, silence]).finally(() => clearTimeout(timer));
}

function said(error: unknown): string[] {
  return [error instanceof Error ? error.message : String(error)];
}

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.mouse.move(700, 450);
  // With these everything a hand needs has been fetched.
  await page.locator(".handle").first().waitFor({ state: "attached" });
  await page.getByRole("button", { name: "Copy table" }).waitFor();
}

/** Puts away what lies over the page, and leaves the field in hand. */
async function toRest(page: Page): Promise<void> {
  await page.setViewportSize({ width: 1440, height: 900 });
  // A panel asked for in the last step may still be on its way.
  for (let quiet = 0; quiet < 3; ) {
    quiet = (await page.locator("dialog[open]").count()) > 0 ? 0 : quiet + 1;
    for (let i = 0; i < 4; i++) await page.keyboard.press("Escape");
    await page.waitForTimeout(250);
  }
  await page.evaluate(async () => {
    if (document.fullscreenElement) await document.exitFullscreen();
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  });
  await page.locator("dialog[open]").waitFor({ state: "detached" });
}

/** Presses the verb so many times, or as long as there is something to it; how often it did. */
async function go(page: Page, verb: "Undo" | "Redo", account: string[], times = 210): Promise<number> {
  const button = page.getByRole("button", { name: new RegExp(`^${verb}`) }).first();
  for (let pressed = 0; pressed < times; pressed++) {
    if ((await button.getAttribute("aria-disabled")) === "true") return pressed;
    account.push((await button.getAttribute("aria-label")) ?? verb);
    await button.click();
  }
  return times;
}

/** The job as it would be saved. */
async function saved(page: Page): Promise<string> {
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  return readFile(await (await waiting).path(), "utf8");
}
