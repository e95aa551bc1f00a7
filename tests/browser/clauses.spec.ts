import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// The clauses of the description: copied, reordered, switched off, removed; frozen they are the text of the printed sheet.

const clauses = (page: Page) => page.locator('#description li.clause[data-clause^="cut:"]');
const openingsOf = (page: Page) => page.locator('.drawing .feature[data-clause^="cut:branch"]');

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await expect(page.locator(".drawing")).toBeVisible();
});

test("a cut is copied, moved before another, switched off and on and removed, and the drawing follows", async ({ page }) => {
  await verb(page, 1, "Copy");
  await expect(clauses(page)).toHaveCount(3);
  const copy = clauses(page).nth(2);
  const height = copy.getByRole("textbox", { name: "Height of its centre" });
  await height.fill("130");
  await height.press("Enter");
  const features = await openingsOf(page).evaluateAll((all) => [...new Set(all.map((one) => one.getAttribute("data-clause")))]);
  expect(features).toHaveLength(2);
  await verb(page, 2, "Move up");
  await expect(clauses(page).nth(1).getByRole("textbox", { name: "Height of its centre" })).toHaveValue("130");
  await verb(page, 1, "Switch off");
  await expect(clauses(page).nth(1)).toContainText("switched off");
  await expect(page.locator(".drawing .feature").and(page.locator(`[data-clause="${features.find((one) => one !== "cut:branch") ?? ""}"]`))).toHaveCount(0);
  await verb(page, 1, "Switch on");
  await expect(clauses(page).nth(1)).not.toContainText("switched off");
  await verb(page, 1, "Remove");
  await expect(clauses(page)).toHaveCount(2);
  await expect(clauses(page).nth(1).getByRole("textbox", { name: "Height of its centre" })).toHaveValue("70");
});

test("the verbs of a clause are reached by keys, and the focus stays with them", async ({ page }) => {
  const more = clauses(page).nth(1).getByRole("button", { name: /more: move/ });
  await more.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("button", { name: "Move up", exact: true })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(clauses(page).first()).toContainText("A round opening");
  await expect(clauses(page).first().getByRole("button", { name: /more: move/ })).toBeFocused();
});

test("the printed text is the same sentences with their numbers frozen", async ({ page }) => {
  const angle = page.getByRole("textbox", { name: "Angle from square" });
  await angle.fill("180-2*70");
  await angle.press("Enter");
  await expect(angle).toHaveValue("40");
  // A thickness and an offset of nothing go unsaid on paper.
  for (const [name, value] of [["Sheet thickness", "1"], ["Sideways, right positive", "5"]] as const) {
    const field = page.getByRole("textbox", { name });
    await field.fill(value);
    await field.press("Enter");
    await expect(field).toHaveValue(value);
  }
  await verb(page, 1, "Copy");
  await verb(page, 1, "Switch off");
  const read = await page.locator("#description li.clause:not([data-off])").evaluateAll((all) =>
    all.map((clause) => {
      const words = clause.querySelector("p")?.cloneNode(true) as HTMLElement;
      const own = [...(clause.querySelector("p")?.querySelectorAll<HTMLInputElement | HTMLSelectElement>("input, select") ?? [])];
      words.querySelectorAll("input, select").forEach((copy, i) => {
        const field = own[i];
        copy.replaceWith(field instanceof HTMLSelectElement ? (field.selectedOptions[0]?.text ?? "") : (field?.value ?? ""));
      });
      return words.textContent;
    }),
  );
  expect(read.join(" ")).toContain("Its top is cut at 40° from square");
  await page.getByRole("button", { name: "Print and cut" }).click();
  await page.getByLabel("What to make").selectOption("board");
  await page.getByLabel("Paper", { exact: true }).selectOption("A2");
  const letters = page.getByRole("dialog").locator("svg text");
  const printed = async () => squeezed((await letters.allTextContents()).join(" "));
  await expect.poll(printed).toContain("evenlyspaced.");
  const sheet = await printed();
  for (const sentence of read) expect(sheet).toContain(squeezed(sentence));
  expect(sheet.split("Aroundopening")).toHaveLength(2);
});

/** Lines are broken elsewhere on paper: what is left when every space is taken out. */
function squeezed(text: string): string {
  return text.replace(/\s+/g, "");
}

/** Does this to the cut of this number. */
async function verb(page: Page, index: number, name: string): Promise<void> {
  const clause = clauses(page).nth(index);
  await clause.getByRole("button", { name: /more: move/ }).click();
  await clause.getByRole("button", { name, exact: true }).click();
}
