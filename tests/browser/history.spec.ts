import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// Undo and redo of everything that changes the job.

const first = "Vent through the lean-to roof";
const undoes = (page: Page) => page.getByRole("button", { name: /^Undo/ });
const redoes = (page: Page) => page.getByRole("button", { name: /^Redo/ });

test.beforeEach(async ({ page }) => {
  await page.goto("/");
});

test("a dozen changes of every kind are undone back to exactly the first job, and all made again", async ({ page }) => {
  const start = await saved(page);
  const clause = (name: string) => page.getByRole("group", { name, exact: true });
  const verbOf = async (name: string, verb: string) => {
    await clause(name).getByRole("button", { name: /more: move/ }).click();
    await clause(name).getByRole("button", { name: verb, exact: true }).click();
  };
  const settings = async (field: string, choice: string) => {
    await page.getByRole("button", { name: "Settings" }).click();
    await page.getByRole("dialog").getByRole("combobox", { name: field }).selectOption(choice);
    await page.keyboard.press("Escape");
  };
  const said: string[] = [];
  const done = async (act: Promise<unknown>, what: string) => {
    await act;
    await expect(undoes(page)).toHaveAccessibleName(`Undo: ${what}`);
    said.push(what);
  };

  await done(type(page, "Diameter", "95"), "Diameter");
  await done(type(page, "Angle from square", "41"), "Angle from square");
  await done(page.getByRole("combobox", { name: "Diameter measured", exact: true }).selectOption("inside"), "Diameter measured");
  await done(verbOf("Round opening", "Switch off"), "Switch off: Round opening");
  await done(verbOf("Round opening", "Switch on"), "Switch on: Round opening");
  await done(verbOf("Round opening", "Remove"), "Remove: Round opening");
  await page.getByRole("button", { name: "Add a cut or an opening" }).click();
  await done(page.getByRole("button", { name: "Slot", exact: true }).click(), "Slot");
  await done(type(page, "Note", "By hand", "Tab"), "Note");
  await done(type(page, "Title of the job", "Another"), "Title of the job");
  await done(settings("Figures in", "inches"), "Figures in");
  await done(settings("Projection", "third angle"), "Projection");
  await done(page.getByRole("button", { name: "New", exact: true }).click(), "New");
  await page.getByRole("button", { name: "Examples" }).click();
  await done(page.locator(".example").nth(1).click(), (await page.locator(".example strong").nth(1).textContent()) ?? "");
  const end = await saved(page);
  expect(end).not.toBe(start);

  for (const what of said.toReversed()) {
    await expect(undoes(page)).toHaveAccessibleName(`Undo: ${what}`);
    await undoes(page).click();
  }
  await expect(undoes(page)).toHaveAttribute("aria-disabled", "true");
  expect(await saved(page)).toBe(start);

  for (const what of said) {
    await expect(redoes(page)).toHaveAccessibleName(`Redo: ${what}`);
    await redoes(page).click();
  }
  expect(await saved(page)).toBe(end);
});

test("the usual keys undo and redo, and what they did is said", async ({ page }) => {
  const angle = page.getByRole("textbox", { name: "Angle from square", exact: true });
  await type(page, "Angle from square", "41");
  await expect(undoes(page)).toHaveAccessibleName("Undo: Angle from square");
  await page.keyboard.press("Control+z");
  await expect(angle).toHaveValue("35");
  await expect(page.locator("[aria-live=polite]").filter({ hasText: "Undone: Angle from square" })).toHaveCount(1);
  await page.keyboard.press("Control+Shift+z");
  await expect(angle).toHaveValue("41");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+y");
  await expect(angle).toHaveValue("41");
});

test("while text is being typed the keys undo the typing, not the job", async ({ page }) => {
  await type(page, "Diameter", "95");
  await expect(undoes(page)).toHaveAccessibleName("Undo: Diameter");
  const angle = page.getByRole("textbox", { name: "Angle from square", exact: true });
  await angle.click();
  await page.keyboard.press("End");
  await page.keyboard.type("7");
  await expect(angle).toHaveValue("357");
  await page.keyboard.press("Control+z");
  await expect(page.getByRole("textbox", { name: "Diameter", exact: true })).toHaveValue("95");
});

test("a drag is one step", async ({ page }) => {
  const angle = page.getByRole("textbox", { name: "Angle from square", exact: true });
  const box = await angle.boundingBox();
  if (!box) throw new Error("no field");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  await page.mouse.down();
  for (let by = 5; by <= 40; by += 5) await page.mouse.move(box.x + box.width / 2 + by, box.y + box.height / 2);
  await page.mouse.up();
  await expect(angle).toHaveValue("43");
  await page.keyboard.press("Control+z");
  await expect(angle).toHaveValue("35");
  await expect(undoes(page)).toHaveAttribute("aria-disabled", "true");
});

test("a held arrow key is one step, two presses are two", async ({ page }) => {
  const angle = page.getByRole("textbox", { name: "Angle from square", exact: true });
  await angle.focus();
  // What a hand needs has been fetched when this is there.
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  for (let i = 0; i < 5; i++) await page.keyboard.down("ArrowUp");
  await page.keyboard.up("ArrowUp");
  await expect(angle).toHaveValue("40");
  await page.keyboard.press("ArrowUp");
  await expect(angle).toHaveValue("41");
  await page.keyboard.press("Control+z");
  await expect(angle).toHaveValue("40");
  await page.keyboard.press("Control+z");
  await expect(angle).toHaveValue("35");
});

test("a text that waits with its fault stays through undo of another field", async ({ page }) => {
  await type(page, "Angle from square", "41");
  await expect(undoes(page)).toHaveAccessibleName("Undo: Angle from square");
  await type(page, "Diameter", "no number");
  await undoes(page).click();
  await expect(page.getByRole("textbox", { name: "Angle from square", exact: true })).toHaveValue("35");
  await expect(page.getByRole("textbox", { name: "Diameter", exact: true })).toHaveValue("no number");
});

test("after undo the work kept is the one on the board", async ({ page }) => {
  await page.getByRole("button", { name: "New", exact: true }).click();
  await undoes(page).click();
  await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue(first);
  await page.reload();
  await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue(first);
});

async function type(page: Page, label: string, text: string, end = "Enter"): Promise<void> {
  const field = page.getByRole("textbox", { name: label, exact: true });
  await field.fill(text);
  await field.press(end);
}

/** The job as it would be saved. */
async function saved(page: Page): Promise<string> {
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  return readFile(await (await waiting).path(), "utf8");
}
