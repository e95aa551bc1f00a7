import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// Nothing typed is lost: what the browser keeps, what happens when it cannot, and other files and settings.

test("a kept job that cannot be read gives a new job and a word about it, never a blank page", async ({ page }) => {
  await page.goto("/");
  await changeAngle(page, "41");
  const broken = await page.evaluate(() => {
    const kept = Object.entries(localStorage as Record<string, string>).filter(([, text]) => text.includes("flatwright-job"));
    for (const [key, text] of kept) localStorage.setItem(key, text.slice(0, 200));
    return kept[0]?.[1].slice(0, 200);
  });
  expect(broken).toHaveLength(200);
  await page.reload();
  await expect(page.getByRole("status").first()).toContainText("could not be read");
  await expect(page.getByLabel("Diameter", { exact: true })).toBeVisible();
  expect(await page.evaluate(() => Object.values(localStorage as Record<string, string>))).toContain(broken);
});

test("a browser without room says that nothing is kept, and the change is made", async ({ page }) => {
  await page.goto("/");
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await page.getByRole("textbox", { name: "Angle from square" }).fill("40");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("status").first()).toContainText("keeps nothing");
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toHaveValue("40");
});

test("New sets the job aside, and it can be brought back", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "New" }).click();
  await expect(page.getByLabel("Title of the job")).toHaveValue("");
  await page.getByRole("button", { name: "Bring it back" }).click();
  await expect(page.getByLabel("Title of the job")).toHaveValue("Vent through the lean-to roof");
});

test("a job file dropped on the page is opened", async ({ page }) => {
  await page.goto("/");
  await changeAngle(page, "41");
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const saved = await readFile(await (await waiting).path(), "utf8");
  await page.getByRole("button", { name: "New" }).click();
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toHaveCount(0);
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], "kept.json", { type: "application/json" }));
    for (const type of ["dragover", "drop"]) window.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
  }, saved);
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toHaveValue("41");
});

test("inches, fractions and third angle are settings that stay", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByLabel("Figures in").selectOption("inches");
  await page.getByLabel("Inches as").selectOption("fractions to 1/16");
  await page.getByRole("dialog").getByLabel("Projection").selectOption("third angle");
  await page.getByRole("combobox", { name: "Light" }).selectOption("slate");
  await page.getByRole("button", { name: "Close", exact: true }).click();
  await page.getByLabel("Diameter", { exact: true }).fill("3 1/2");
  await page.keyboard.press("Enter");
  await page.reload();
  await expect(page.getByLabel("Diameter", { exact: true })).toHaveValue("3 1/2");
  await expect(page.getByRole("row", { name: /^Stretch-out / }).getByRole("cell").last()).toHaveText("11");
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe("rgb(37, 43, 48)");
});

test("each example opens to a drawing and a table without NaN", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Examples" }).click();
  await expect(page.locator(".example strong")).toHaveCount(6);
  const titles = await page.locator(".example strong").allTextContents();
  await page.keyboard.press("Escape");
  for (const title of titles) {
    await page.getByRole("button", { name: "Examples" }).click();
    await page.getByRole("button", { name: title }).click();
    await expect(page.getByLabel("Title of the job")).toHaveValue(title);
    expect(await page.locator("body").innerText()).not.toMatch(/NaN|undefined|Infinity/);
    expect(await page.locator(".drawing").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
  }
});

test("every kind of cut can be added from the menu, switched off and removed again", async ({ page }) => {
  await page.goto("/");
  const kinds = ["Cut an end at an angle", "Hollow an end", "Round an end", "Ogee end", "Step", "Vee", "Free profile", "Round opening", "Rectangular opening", "Slot"];
  const clauses = page.locator("li.clause");
  const before = await clauses.count();
  for (const kind of kinds) {
    await page.getByRole("button", { name: "Add a cut or an opening" }).click();
    await page.locator(".add-cut").getByRole("button", { name: kind, exact: true }).click();
    await expect(clauses).toHaveCount(before + 1);
    const added = clauses.nth(2);
    for (const verb of ["Switch off", "Remove"]) {
      await added.getByRole("button", { name: /move, copy, switch off, remove/ }).click();
      await added.getByRole("button", { name: verb, exact: true }).click();
    }
    await expect(clauses).toHaveCount(before);
  }
});

test("the keys that print open the print panel", async ({ page }) => {
  await page.goto("/");
  await expect(page.locator(".drawing")).toBeVisible();
  await page.keyboard.press("Control+p");
  await expect(page.getByRole("heading", { name: "Print and cut" })).toBeVisible();
});

/** Changes the angle of the cut and waits until the change is made and kept. */
async function changeAngle(page: Page, degrees: string): Promise<void> {
  const field = page.getByRole("textbox", { name: "Angle from square" });
  await field.fill(degrees);
  await field.press("Enter");
  await expect(page.locator(".drawing")).toContainText(`${degrees}°`);
}
