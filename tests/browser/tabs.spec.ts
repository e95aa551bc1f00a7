import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// Several tabs, tabs that are killed, and browsers that keep nothing: no work is lost, and none written over.

const title = (page: Page) => page.getByRole("textbox", { name: "Title of the job" });
const banner = (page: Page) => page.locator(".banner-place");

test("two tabs with the same work each go on with a copy of their own, and the second is told", async ({ page, context }) => {
  await page.goto("/");
  await entitle(page, "One");
  const other = await context.newPage();
  await other.goto("/");
  await expect(title(other)).toHaveValue("One");
  await expect(banner(other)).toContainText("open in another tab");
  await entitle(other, "Two");
  await entitle(page, "One more");
  for (const [tab, name] of [[other, "Two"], [page, "One more"]] as const) {
    await tab.reload();
    await expect(title(tab)).toHaveValue(name);
    await expect(banner(tab)).not.toContainText("another tab");
  }
});

test("a tab made from another, which remembers what that one held, goes on with a copy of its own too", async ({ page }) => {
  await page.goto("/");
  await entitle(page, "One");
  const opening = page.waitForEvent("popup");
  await page.evaluate(() => void window.open("/"));
  const other = await opening;
  expect(await other.evaluate(() => sessionStorage.length)).toBeGreaterThan(0);
  await expect(title(other)).toHaveValue("One");
  await expect(banner(other)).toContainText("open in another tab");
  await entitle(other, "Two");
  await entitle(page, "One more");
  await other.reload();
  await expect(title(other)).toHaveValue("Two");
  await page.reload();
  await expect(title(page)).toHaveValue("One more");
});

test("the work of a tab killed right after a change is there in the next", async ({ page, context }) => {
  const killed = await context.newPage();
  await killed.goto("/");
  await entitle(killed, "Just typed");
  const crashed = killed.waitForEvent("crash");
  const devtools = await context.newCDPSession(killed);
  devtools.send("Page.crash").catch(() => undefined);
  await crashed;
  await page.goto("/");
  await expect(title(page)).toHaveValue("Just typed");
  await expect(banner(page)).not.toContainText("another tab");
});

test("what stands in a field is kept when the page is loaded again", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("textbox", { name: "Angle from square", exact: true }).fill("41");
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("textbox", { name: "Angle from square", exact: true })).toHaveValue("41");
});

test("the last of many quick changes is kept when the page is left", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("textbox", { name: "Angle from square", exact: true }).focus();
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  for (let i = 0; i < 8; i++) await page.keyboard.press("ArrowUp");
  await page.reload();
  await expect(page.getByRole("textbox", { name: "Angle from square", exact: true })).toHaveValue("43");
});

test("the work of a closed tab can be taken up again", async ({ page, context }) => {
  await page.goto("/");
  await entitle(page, "One");
  const other = await context.newPage();
  await other.goto("/");
  await entitle(other, "Two");
  await other.close();
  await untilAlone(page);
  await page.reload();
  await page.getByRole("button", { name: "Earlier work", exact: true }).click();
  await expect(page.locator(".example strong")).toHaveText(["Two"]);
  await page.locator(".example").click();
  await expect(title(page)).toHaveValue("Two");
  await page.getByRole("button", { name: "Earlier work", exact: true }).click();
  await expect(page.locator(".example strong")).toHaveText(["One"]);
});

test("work set aside by New is earlier work, also after the tab was closed", async ({ page, context }) => {
  const closed = await context.newPage();
  await closed.goto("/");
  await entitle(closed, "Set aside");
  await closed.getByRole("button", { name: "New", exact: true }).click();
  await expect(closed.getByRole("button", { name: "Earlier work", exact: true })).toBeVisible();
  await closed.close();
  await page.goto("/");
  await page.getByRole("button", { name: "Earlier work", exact: true }).click();
  await expect(page.locator(".example strong")).toHaveText(["Set aside"]);
});

test("a full browser is said once, with the offer to save to a file", async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await page.goto("/");
  await expect(banner(page)).toBeEmpty();
  await entitle(page, "Kept nowhere");
  await expect(banner(page)).toContainText("keeps nothing");
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save to a file" }).click();
  expect(await readFile(await (await waiting).path(), "utf8")).toContain("Kept nowhere");
  await page.getByRole("button", { name: "Dismiss" }).click();
  await entitle(page, "Nor this");
  await expect(title(page)).toHaveValue("Nor this");
  await expect(banner(page)).toBeEmpty();
});

test("a setting and a printer's correction that cannot be kept are said, and hold until the page is left", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Settings" }).click();
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await page.getByRole("combobox", { name: "Light" }).selectOption("slate");
  await page.keyboard.press("Escape");
  await expect(banner(page)).toContainText("keeps nothing");
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe("rgb(37, 43, 48)");
  await page.getByRole("button", { name: "Dismiss" }).click();
  await page.getByRole("button", { name: "Print and cut" }).click();
  await page.getByRole("button", { name: "Measure a printer" }).click();
  await page.getByLabel("Name of the printer").fill("Workshop");
  await page.getByRole("button", { name: "Keep the correction" }).click();
  await expect(page.getByRole("dialog")).toContainText("Workshop");
  await page.keyboard.press("Escape");
  await expect(banner(page)).toContainText("keeps nothing");
});

test("a browser that refuses all storage is said, and the page works", async ({ page }) => {
  await page.addInitScript(() => {
    for (const name of ["localStorage", "sessionStorage"]) {
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException("denied", "SecurityError");
        },
      });
    }
  });
  await page.goto("/");
  await expect(banner(page)).toContainText("keeps nothing");
  await page.getByRole("textbox", { name: "Angle from square", exact: true }).fill("41");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("textbox", { name: "Angle from square", exact: true })).toHaveValue("41");
});

test("a kept text that is no job is put aside, and older work can be taken up", async ({ page }) => {
  await page.goto("/");
  await entitle(page, "Older");
  await page.evaluate(() => {
    localStorage.setItem("flatwright.job.broken", `${Date.now() + 1000}\n{"format":`);
    sessionStorage.clear();
  });
  await page.reload();
  await expect(banner(page)).toContainText("could not be read");
  await page.getByRole("button", { name: "Earlier work", exact: true }).click();
  await expect(page.locator(".example strong")).toHaveText(["Older"]);
});

/** Until this page alone holds its work: for a moment after a tab was closed its work still counts as in hand. */
async function untilAlone(page: Page): Promise<void> {
  await expect.poll(() => page.evaluate(async () => (await navigator.locks.query()).held?.length)).toBe(1);
}

async function entitle(page: Page, text: string): Promise<void> {
  await title(page).fill(text);
  await title(page).press("Enter");
  await expect(page.getByRole("button", { name: "Undo: Title of the job" })).toBeVisible();
}
