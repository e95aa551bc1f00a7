import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// Reduced motion shows the end of everything at once; what moves else is finite and explains.

/** Properties and names of what moves on the page, those that never end marked. */
async function moving(page: Page): Promise<string[]> {
  return page.evaluate(() => document.getAnimations().map((one) => `${one.effect?.getComputedTiming().endTime === Infinity ? "endless " : ""}${(one as CSSAnimation).animationName ?? (one as CSSTransition).transitionProperty}`));
}

/** Takes clause, station and step in hand, and says all that moved meanwhile. */
async function sitting(page: Page): Promise<Set<string>> {
  const seen = new Set<string>();
  const look = async () => (await moving(page)).forEach((one) => seen.add(one));
  await page.goto("/");
  await page.mouse.move(700, 5);
  await expect(page.getByRole("button", { name: "Closer", exact: true })).toBeVisible();
  await page.getByRole("group", { name: "Round opening" }).hover();
  await look();
  await page.locator(".board").focus();
  await page.keyboard.press("Home");
  await look();
  await page.getByRole("button", { name: "Closer", exact: true }).click();
  await look();
  await page.getByRole("link", { name: "Teach" }).click();
  await page.getByRole("button", { name: /^Next/ }).first().click();
  await expect(page.locator(".drawing .line").first()).toBeAttached();
  await look();
  return seen;
}

test("where motion is unwelcome nothing moves", async ({ page }) => {
  expect([...(await sitting(page))]).toEqual([]);
});

test("else a clause lights up and a step draws itself, and nothing moves without end", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "no-preference" });
  const seen = [...(await sitting(page))];
  expect(seen).toContain("draw-itself");
  expect(seen.filter((one) => one.startsWith("endless"))).toEqual([]);
});
